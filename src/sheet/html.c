/* SPDX-License-Identifier: MIT */
#include "sheet/html.h"

#include <string.h>

#include "drawing/svg.h"
#include "sheet/html_table.h"

/* Black on white; of each drawing there are two: one for a desk and for paper, and one for a screen
 * narrower than the text. Tables: html_table.c. */
static const char style[] =
	"html{font:16px/1.45 'DejaVu Sans',Verdana,sans-serif;color:#000;background:#fff}\n"
	"body{max-width:62rem;margin:0 auto;padding:0 1rem 3rem}\n"
	"header,footer{border-bottom:1px solid #000;padding:1rem 0;margin-bottom:1rem}\n"
	"footer{border:0;border-top:1px solid #000;margin-top:2rem}\n"
	"h1{font-size:1.5rem;margin:.2rem 0}h2{font-size:1.35rem;border-bottom:3px solid "
	"#000;margin:2.5rem 0 .8rem}\n"
	"h3{font-size:1.12rem;border-bottom:1px solid #000;margin:1.6rem 0 "
	".6rem}h4{font-size:1.05rem;margin:1.2rem 0 .4rem}h5{font-size:.95rem;margin:.8rem 0 .4rem}\n"
	".verdict{border:3px solid #000;padding:.7rem;font-weight:bold;font-size:1.1rem}\n"
	".caution{border-left:6px solid #000;padding:.2rem .7rem;margin:.7rem 0}\n"
	".seal{border:1px solid "
	"#000;min-height:8rem;max-width:30rem;padding:.4rem;font-size:.85rem}\n"
	"dl{display:grid;grid-template-columns:minmax(8rem,16rem) 1fr;gap:.15rem "
	"1rem}dd{margin:0}\n"
	"li.box{list-style-type:'\\2610\\a0';margin:.3rem 0}\n"
	/* values and result each begin with their "=", on a line of their own if they must break */
	".q{display:inline-block}.n{white-space:nowrap}.note{font-size:.85rem}.step{margin:.7rem 0}.step "
	"b{display:block}.clause{font-size:.85rem}\n"
	".drawing svg,.phone svg{display:block;width:100%;height:auto}.phone{display:none}\n"
	/* edge to edge: 1rem is the body's own margin */
	"@media screen and (max-width:62rem){.desk{display:none}"
	".phone{display:block;margin:0 -1rem}.phone svg{max-width:34rem;margin:0 auto}}\n"
	"@media(max-width:36rem){dl{display:block}dt{margin-top:.4rem;font-weight:bold}}\n"
	/* wider than the text where the screen is: the letters of a sheet are small on it */
	"@media screen and (min-width:66rem){.desk{--wide:min(100vw - 3rem,78rem);"
	"width:var(--wide);margin-left:calc(50% - var(--wide)/2)}}\n"
	"@page wide{size:landscape}@media print{section{break-before:page}"
	"#sheet-1{break-before:auto}.wide{page:wide}.drawing svg{max-height:6.3in}"
	"nav{display:none}h2,h3,h4,h5{break-after:avoid}"
	"tr,.step,li,.seal,.verdict{break-inside:avoid}html{font-size:12px}}\n";

/* Bytes of a number with a hyphen in it at the start of text; 0 if there is none. */
static size_t hyphened(const char *text)
{
	const size_t before = strspn(text, "0123456789.");

	if (before == 0 || text[before] != '-')
		return 0;
	const size_t after = strspn(text + before + 1, "0123456789./");

	return after > 0 ? before + 1 + after + strspn(text + before + 1 + after, "ABCDEFGHI") : 0;
}

void html_text(FILE *f, const char *text)
{
	char piece[2] = "";
	/* a number may, after a blank, a blank that does not break (its last byte) or a bracket */
	bool begins = true;

	while (*text) {
		const size_t n = begins ? hyphened(text) : 0;

		if (n > 0)
			fprintf(f, "<span class=\"n\">%.*s</span>", (int)n, text);
		text += n;
		begins = false;
		if (n > 0)
			continue;
		piece[0] = *text++;
		begins = strchr(" (\xa0", piece[0]);
		svg_text(f, piece);
	}
}

static void tagged(FILE *f, const char *tag, const char *class, const char *text)
{
	if (*class)
		fprintf(f, "<%s class=\"%s\">", tag, class);
	else
		fprintf(f, "<%s>", tag);
	html_text(f, text);
	fprintf(f, "</%s>\n", tag);
}

void html_begin(FILE *f, const struct html_page *page)
{
	fputs("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
	      "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>",
	      f);
	svg_text(f, page->title);
	fprintf(f, "</title>\n<style>\n%s%s</style>\n</head>\n<body>\n<header>\n", style,
		html_table_style);
	tagged(f, "h1", "", page->title);
	tagged(f, "div", "", page->job);
	tagged(f, "div", "note", page->fingerprint);
	fputs("</header>\n<main>\n", f);
}

void html_contents(FILE *f, const char *const *name, int n)
{
	fputs("<nav aria-label=\"Sheets\">\n<ol>\n", f);
	for (int i = 0; i < n; i++) {
		fprintf(f, "<li><a href=\"#sheet-%d\">", i + 1);
		html_text(f, name[i]);
		fputs("</a></li>\n", f);
	}
	fputs("</ol>\n</nav>\n", f);
}

void html_sheet_begin(FILE *f, int number, const char *name, bool wide)
{
	fprintf(f, "<section id=\"sheet-%d\"%s>\n<h2>%d&#160; ", number,
		wide ? " class=\"wide\"" : "", number);
	html_text(f, name);
	fputs("</h2>\n", f);
}

void html_sheet_end(FILE *f)
{
	fputs("</section>\n", f);
}

void html_seal(FILE *f)
{
	tagged(f, "p", "seal",
	       "Room for the seal, signature and date of a licensed engineer. Empty: nobody has "
	       "sealed this.");
}

void html_drawing(FILE *f, const struct drawing *d, const struct drawing *narrow)
{
	fprintf(f, "<div class=\"drawing%s\">\n", narrow ? " desk" : "");
	drawing_write_svg(f, d, SVG_INLINE);
	fputs("</div>\n", f);
	if (!narrow)
		return;
	fputs("<div class=\"phone\">\n", f);
	drawing_write_svg(f, narrow, SVG_INLINE);
	fputs("</div>\n", f);
}

static void put_pairs(FILE *f, const struct pair *p)
{
	fputs("<dl>\n", f);
	for (; p; p = p->next) {
		tagged(f, "dt", "", p->name);
		fputs("<dd>", f);
		html_text(f, p->value);
		if (*p->note) {
			fputs("<br><span class=\"note\">", f);
			html_text(f, p->note);
			fputs("</span>", f);
		}
		fputs("</dd>\n", f);
	}
	fputs("</dl>\n", f);
}

static void put_step(FILE *f, const struct step_line *s)
{
	fputs("<div class=\"step\">", f);
	tagged(f, "b", "", s->title);
	html_text(f, s->symbol);
	fputs(" = ", f);
	html_text(f, s->formula);
	if (*s->values) {
		fputs(" <span class=\"q\">= ", f);
		html_text(f, s->values);
		fputs("</span>", f);
	}
	fputs(" <span class=\"q\">= ", f);
	tagged(f, "strong", "", s->result);
	fputs("</span>\n", f);
	if (*s->where)
		tagged(f, "div", "note", s->where);
	tagged(f, "div", "clause", s->clause);
	if (*s->status)
		tagged(f, "div", "note", s->status);
	fputs("</div>\n", f);
}

/* Bullets and numbered steps stand in lists; *list is the list that is open. */
static void in_list(FILE *f, enum block_kind kind, enum block_kind *list)
{
	if (*list == kind)
		return;
	if (*list == BLOCK_BULLET || *list == BLOCK_NUMBERED)
		fputs(*list == BLOCK_BULLET ? "</ul>\n" : "</ol>\n", f);
	if (kind == BLOCK_BULLET || kind == BLOCK_NUMBERED)
		fputs(kind == BLOCK_BULLET ? "<ul>\n" : "<ol>\n", f);
	*list = kind;
}

static void put_block(FILE *f, const struct block *b)
{
	switch (b->kind) {
	case BLOCK_TITLE:
		tagged(f, "h3", "", b->text);
		return;
	case BLOCK_VERDICT:
		tagged(f, "p", "verdict", b->text);
		return;
	case BLOCK_HEADING:
		tagged(f, b->level <= 1 ? "h3" : b->level == 2 ? "h4" : "h5", "", b->text);
		return;
	case BLOCK_PARAGRAPH:
		tagged(f, "p", "", b->text);
		return;
	case BLOCK_BULLET:
		tagged(f, "li", b->level > 0 ? "box" : "", b->text);
		return;
	case BLOCK_NUMBERED:
		fprintf(f, "<li value=\"%d\">", b->level);
		html_text(f, b->text);
		fputs("</li>\n", f);
		return;
	case BLOCK_CAUTION:
		tagged(f, "p", "caution", b->text);
		return;
	case BLOCK_PAIRS:
		put_pairs(f, b->pair);
		return;
	case BLOCK_TABLE:
		html_table(f, b->table);
		return;
	case BLOCK_STEP:
		put_step(f, b->step);
		return;
	case BLOCK_KIND_COUNT:
		return;
	}
}

void html_document(FILE *f, const struct document *d)
{
	enum block_kind list = BLOCK_KIND_COUNT;

	for (const struct block *b = document_first(d); b; b = b->next) {
		in_list(f, b->kind, &list);
		put_block(f, b);
	}
	in_list(f, BLOCK_KIND_COUNT, &list);
}

void html_end(FILE *f, const struct html_page *page)
{
	fputs("</main>\n<footer>\n", f);
	tagged(f, "div", "", page->verdict);
	tagged(f, "div", "note", page->caution);
	tagged(f, "div", "note", page->fingerprint);
	fputs("</footer>\n</body>\n</html>\n", f);
}
