/* SPDX-License-Identifier: MIT */
/* The field sheet: one page of paper to take up the ladder. Only what hands need: drawing, sizes,
   steps, tools, what stops the work. Everything else is on the page. */
#include "detail/page.h"

#include <string.h>

#include "drawing/svg.h"

static const char style[] =
	"body{font:0.95rem/1.35 sans-serif;color:#000;background:#fff;margin:0 auto;padding:0 "
	"1rem;max-width:50rem;"
	"overflow-wrap:break-word}\n"
	"h1{font-size:1.3rem;line-height:1.2;margin:.5rem 0}h2{font-size:1.05rem;margin:.6rem 0 "
	".2rem;border-top:1px solid #000}\n"
	"ul,ol{margin:.2rem 0;padding-left:1.4rem}li{margin:.1rem 0;break-inside:avoid}\n"
	"ul.check{list-style:none;padding-left:0}ul.check li::before{content:\"\\2610\\00a0\"}\n"
	".stop{border:2px solid #000;padding:0 .5rem .3rem}.stop h2{border:0}p{margin:.3rem 0}\n"
	"figure{margin:.3rem "
	"0;break-inside:avoid}svg{display:block;box-sizing:border-box;width:100%;height:auto;"
	"border:1px solid #000}\n"
	"dl{display:grid;grid-template-columns:1fr auto;gap:0 .8rem;margin:.2rem "
	"0}dt,dd{margin:0}dd{font-weight:bold}\n"
	"footer{font-size:.85rem}\n"
	"@media(min-width:48rem){main{columns:2;column-gap:1.2rem}}\n"
	"@page{margin:9mm 10mm}\n"
	"@media "
	"print{body{font-size:8.3pt;line-height:1.24;max-width:none;padding:0}main{columns:2;"
	"column-gap:5mm}"
	"h1{font-size:12pt;margin:0 0 1mm}h2{font-size:9pt;margin:1.2mm 0 .4mm;break-after:avoid}"
	".stop{break-inside:avoid}svg{width:82mm}figure{margin:.5mm 0}p,ul,ol{margin:.4mm "
	"0}li{margin:0}footer{font-size:6.6pt}}\n";

struct walk {
	FILE *f;
	const char *section; /* that is wanted */
	int entries;
};

static void on_entry(void *context, const struct guide_block *b)
{
	struct walk *w = context;

	if (strcmp(b->section, w->section) != 0 || b->kind == GUIDE_HEADING ||
	    b->kind == GUIDE_TITLE)
		return;
	fputs("<li>", w->f);
	svg_text(w->f, b->text);
	fputs("</li>\n", w->f);
	w->entries++;
}

static void list(FILE *f, const struct page_request *request, const char *section,
		 const char *heading, const char *open, const char *close)
{
	struct guide_request guide = request->guide;
	struct walk w = {.f = f, .section = section};
	const struct guide_sink sink = {on_entry, &w};
	struct problem_list unseen = {.count = 0};

	guide.depth = GUIDE_FULL;
	fprintf(f, "<section id=\"%s\"%s>\n<h2>%s</h2>\n%s\n", section,
		strcmp(section, "stop") == 0 ? " class=\"stop\"" : "", heading, open);
	guide_notes(request->lib, &guide, &sink, &unseen);
	fprintf(f, "%s\n</section>\n", close);
}

static void lists(FILE *f, const struct page_request *request, enum guide_use use)
{
	if (use == GUIDE_USE_REFUSED) {
		list(f, request, "reasons", "Do not open this covering", "<ul>", "</ul>");
		list(f, request, "instead", "What to do instead", "<ul>", "</ul>");
		list(f, request, "call", "Whom to call", "<ul>", "</ul>");
		return;
	}
	list(f, request, "stop", "Stop the work if", "<ul>", "</ul>");
	list(f, request, "steps", "Step by step", "<ol>", "</ol>");
	list(f, request, "tools", "Tools", "<ul class=\"check\">", "</ul>");
}

bool page_write_sheet(FILE *f, const struct lettering *lettering,
		      const struct page_request *request)
{
	struct guide_page page;
	char title[200];

	if (!guide_page_find(request->lib, request->guide.key, &page))
		return false;
	snprintf(title, sizeof title, "Field sheet: %.120s", page.name);
	page_head(f, title, style);
	fputs("<header>\n<h1>", f);
	svg_text(f, title);
	fputs("</h1>\n", f);
	if (page.use == GUIDE_USE_WITH_ROOFER)
		fputs("<p><strong>A roofer of this trade does, or leads, all work on the covering "
		      "itself.</strong></p>\n",
		      f);
	fputs("</header>\n<main>\n", f);
	const bool drawn = page_figure(f, lettering, request, "foot", "section");

	page_sizes(f, request);
	lists(f, request, page.use);
	fputs("</main>\n", f);
	page_foot(f, request);
	return drawn;
}
