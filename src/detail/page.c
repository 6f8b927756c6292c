/* SPDX-License-Identifier: MIT */
/* The whole page. Headings keep their order: none is more than one level below the one before. */
#include "detail/page.h"

#include <string.h>

#include "drawing/svg.h"

static const char style[] =
	"body{font:1rem/1.5 sans-serif;color:#000;background:#fff;margin:0 auto;padding:0 "
	"1rem;max-width:46rem;"
	"overflow-wrap:break-word}\n"
	"h1{font-size:1.6rem;line-height:1.2}h2{font-size:1.3rem;border-top:2px solid "
	"#000;padding-top:.5rem}\n"
	"h3{font-size:1.1rem}h4{font-size:1rem}\n"
	"a{color:#000}nav ul{columns:12rem;padding-left:1.2rem}\n"
	"li{margin:.3rem 0}small{color:#333}\n"
	".caution{border:2px solid #000;padding:.5rem .75rem}\n"
	"figure{margin:1rem "
	"0;break-inside:avoid}svg{display:block;box-sizing:border-box;width:100%;max-width:32rem;"
	"height:auto;border:1px solid #000}\n"
	"dl{display:grid;grid-template-columns:1fr auto;gap:.2rem "
	"1rem}dt,dd{margin:0}dd{font-weight:bold;text-align:right}\n"
	".scroll{overflow-x:auto}table{border-collapse:collapse}th{text-align:left;vertical-align:bottom;border-bottom:2px solid #000}"
	"th,td{padding:.15rem .7rem .15rem 0;vertical-align:top}.r{text-align:right}.k{white-space:nowrap}"
	"td[class=\"\"]{min-width:9rem}\n"
	"@media(max-width:30rem){body{padding:0 .5rem}ul,ol{padding-left:1.5rem}}\n"
	"@page{margin:15mm 16mm}\n"
	"@media "
	"print{body{font-size:9.5pt;line-height:1.35;max-width:none;padding:0}nav{display:none}"
	"h2,h3,h4{break-after:avoid}.caution,li{break-inside:avoid}li{margin:.1rem "
	"0}p{margin:.4rem 0}"
	".figures{display:grid;grid-template-columns:1fr "
	"1fr;gap:5mm;align-items:start}svg{max-width:none}figure{margin:0}}\n";

enum open_list { LIST_NONE, LIST_BULLETS, LIST_STEPS };

struct walk {
	FILE *f;
	const struct lettering *lettering;
	const struct page_request *request;
	enum open_list list;
	int level; /* of the last heading */
	bool section;
	bool failed;
};

static void close_list(struct walk *w)
{
	static const char *const tag[] = {"", "</ul>\n", "</ol>\n"};

	fputs(tag[w->list], w->f);
	w->list = LIST_NONE;
}

static void close_section(struct walk *w)
{
	close_list(w);
	if (w->section)
		fputs("</section>\n", w->f);
	w->section = false;
}

/* A refusal shows how the pipes come in without opening the roof. */
static void figure_instead(struct walk *w)
{
	if (detail_known(w->request->lib, w->request->guide.key, "wall", "section"))
		w->failed = !page_figure(w->f, w->lettering, w->request, "wall", "section") ||
			    w->failed;
}

static void figures(struct walk *w, const char *section)
{
	if (strcmp(section, "instead") == 0)
		figure_instead(w);
	if (strcmp(section, "foot") != 0 && strcmp(section, "pipe") != 0)
		return;
	if (!detail_known(w->request->lib, w->request->guide.key, section, "section"))
		return;
	fputs("<div class=\"figures\">\n", w->f);
	w->failed = !page_figure(w->f, w->lettering, w->request, section, "section") || w->failed;
	w->failed = !page_figure(w->f, w->lettering, w->request, section, "plan") || w->failed;
	fputs("</div>\n", w->f);
}

/* Links to the sections, gathered in a walk of their own and set below the title. */
static void on_link(void *context, const struct guide_block *b)
{
	FILE *f = context;

	if (b->kind != GUIDE_HEADING || b->level != 1)
		return;
	fprintf(f, "<li><a href=\"#%s\">", b->section);
	svg_text(f, b->text);
	fputs("</a></li>\n", f);
}

static void contents(struct walk *w)
{
	struct guide_request guide = w->request->guide;
	const struct guide_sink links = {on_link, w->f};
	struct problem_list unseen = {.count = 0};

	guide.depth = GUIDE_FULL;
	fputs("<nav aria-label=\"Sections\">\n<ul>\n", w->f);
	guide_notes(w->request->lib, &guide, &links, &unseen);
	fputs("</ul>\n</nav>\n", w->f);
}

static void heading(struct walk *w, const struct guide_block *b)
{
	int level = b->kind == GUIDE_TITLE ? 1 : b->level + 1;

	if (b->kind == GUIDE_HEADING && b->level == 1) {
		close_section(w);
		fprintf(w->f, "<section id=\"%s\">\n", b->section);
		w->section = true;
	}
	close_list(w);
	if (level > w->level + 1)
		level = w->level + 1;
	w->level = level;
	fprintf(w->f, "<h%d>", level);
	svg_text(w->f, b->text);
	fprintf(w->f, "</h%d>\n", level);
	if (level == 1)
		contents(w);
	if (level == 2)
		figures(w, b->section);
}

static void words(struct walk *w, const struct guide_block *b)
{
	const char *status = guide_status_text(b->status);

	if (*b->label) {
		fputs("<strong>", w->f);
		svg_text(w->f, b->label);
		fputs(":</strong> ", w->f);
	} else if (b->kind == GUIDE_CAUTION) {
		fputs("<strong>Caution:</strong> ", w->f);
	}
	svg_text(w->f, b->text);
	if (*status) {
		fprintf(w->f, " <small>(%s%s", status, *b->source ? ": " : "");
		svg_text(w->f, b->source);
		fputs(")</small>", w->f);
	}
}

static void entry(struct walk *w, const struct guide_block *b, enum open_list list)
{
	if (w->list != list) {
		close_list(w);
		if (list == LIST_STEPS)
			fprintf(w->f, "<ol start=\"%d\">\n", b->number);
		else
			fputs("<ul>\n", w->f);
		w->list = list;
	}
	fputs("<li>", w->f);
	words(w, b);
	fputs("</li>\n", w->f);
}

static void paragraph(struct walk *w, const struct guide_block *b)
{
	close_list(w);
	fputs(b->kind == GUIDE_CAUTION ? "<p class=\"caution\">" : "<p>", w->f);
	words(w, b);
	fputs("</p>\n", w->f);
}

static void on_block(void *context, const struct guide_block *b)
{
	struct walk *w = context;

	switch (b->kind) {
	case GUIDE_TITLE:
	case GUIDE_HEADING:
		heading(w, b);
		return;
	case GUIDE_STEP:
		entry(w, b, LIST_STEPS);
		return;
	case GUIDE_BULLET:
		entry(w, b, LIST_BULLETS);
		return;
	case GUIDE_PARAGRAPH:
	case GUIDE_CAUTION:
		paragraph(w, b);
		return;
	}
}

bool page_write(FILE *f, const struct lettering *lettering, const struct page_request *request)
{
	struct guide_request guide = request->guide;
	struct walk w = {.f = f, .lettering = lettering, .request = request};
	const struct guide_sink body = {on_block, &w};
	struct problem_list unseen = {.count = 0};
	struct guide_page page;
	char title[200];

	if (!guide_page_find(request->lib, guide.key, &page))
		return false;
	guide.depth = GUIDE_FULL;
	snprintf(title, sizeof title, "%.120s: mounts and pipes through the roof", page.name);
	page_head(f, title, style);
	fputs("<main>\n", f);
	guide_notes(request->lib, &guide, &body, &unseen);
	close_section(&w);
	page_sizes(f, request);
	if (request->of_job)
		w.failed = !request->of_job(f, request->of_job_what) || w.failed;
	fputs("</main>\n", f);
	page_foot(f, request);
	return !w.failed;
}
