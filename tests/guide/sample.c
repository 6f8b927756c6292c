/* SPDX-License-Identifier: MIT */
#include "sample.h"

#include <dirent.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "near.h"

static const char barn[] =
	"<?xml version='1.0'?>\n"
	"<covering key='barn' guide='yes'>\n"
	"<names><plain>barn board</plain><also>plank</also><also>slab</also></names>\n"
	"<recognise><look status='derived'>Boards.</look>"
	"<age status='confirmed' source='book' clause='p. 3'>Old.</age></recognise>\n"
	"<sheds><say status='our-rule'>Like a\n  barn &amp; more.</say></sheds>\n"
	"<limits><quantity name='slope-least' value='3:12' status='derived'/>"
	"<quantity name='weight' low='2 psf' high='3 psf' for='wet' "
	"status='from-memory'>Soaked.</quantity>"
	"<quantity name='weight' value='1 psf' status='from-memory'/>"
	"<slippery snow='no' status='derived'/></limits>\n"
	"<look-first><item status='derived' slope-below='4:12'>Low.</item>"
	"<item status='derived' slope-from='4:12'>High.</item>"
	"<item status='derived' slope-from='4:12' slope-below='8:12'>Middle.</item></look-first>\n"
	"<lifting><item status='derived'>Lift {1/4 in}.</item></lifting>\n"
	"<foot><choice rank='1' status='derived'>A post.</choice>"
	"<never status='derived'>A bolt.</never>"
	"<piece name='Plate'><extent edge='down' least='4 in' from='plate-down' "
	"status='derived'>Seen.</extent>"
	"<extent edge='side' least='4 in' slope-from='4:12' status='derived'/>"
	"<extent edge='side' least='6 in' slope-below='4:12' status='derived'/></piece></foot>\n"
	"<pipe><hole status='derived'><with>Hole {pipe-ellipse} by "
	"{pipe-across}.</with><else>Oval.</else></hole></pipe>\n"
	"<valleys><item status='derived'>Away.</item></valleys>\n"
	"<steps><use part='order'/><step status='derived'>Third.</step></steps>\n"
	"<tools><item status='derived'>Hammer.</item></tools>\n"
	"<materials><item status='derived'><with>{feet} "
	"plates.</with><else>Plates.</else></item></materials>\n"
	"<inspection><item status='derived'>Look.</item></inspection>\n"
	"<water-test><item status='derived'>Hose.</item></water-test>\n"
	"<failure><item status='derived'>Drip.</item></failure>\n"
	"<stop><use part='stop-any'/></stop>\n"
	"<walking><item status='derived'>Softly.</item></walking>\n"
	"<call><item status='derived'>Anybody.</item></call>\n"
	"<cautions><caution status='derived'>Mind.</caution></cautions>\n"
	"<drawing of='foot' view='section' title='Post'>"
	"<layer kind='deck' label='deck' status='derived'><size name='thickness' value='1/2 in' "
	"from='deck-thickness'/></layer>"
	"<layer kind='plate' label='plate' woven='yes' status='our-rule'><size name='down' "
	"value='4 in' from='plate-down'/>"
	"<size name='base' value='-1 in'/></layer></drawing>\n"
	"</covering>\n";

static const char nest[] =
	"<refusal key='nest'><names><plain>nest</plain></names>"
	"<recognise><look status='derived'>Twigs.</look></recognise>"
	"<reasons><say status='derived'>Birds.</say></reasons>"
	"<instead><item status='derived'>Wait.</item></instead>"
	"<call><item status='derived'>Nobody.</item></call>"
	"<cautions><caution status='derived'>Eggs.</caution></cautions></refusal>\n";

static const char common[] =
	"<common><part id='defers' title='First'><caution status='our-rule'>Gives "
	"way.</caution></part>"
	"<part id='order' title='Order of work'><step status='derived'>First.</step>"
	"<step status='derived'>Second.</step></part>"
	"<part id='stop-any' title='Stop anywhere'><item "
	"status='derived'>fire</item></part></common>\n";

static const char sources[] =
	"<sources><source id='book'><title>A book</title><seen>page 3</seen></source></sources>\n";

const char *sample_directory(void)
{
	const char *dir = getenv("GUIDE_LIBRARY");

	if (!dir)
		fail_msg("GUIDE_LIBRARY does not name the covering library");
	return dir;
}

static char *copy_bytes(const char *text, size_t size)
{
	char *copy = malloc(size + 1);

	assert_non_null(copy);
	memcpy(copy, text, size);
	copy[size] = '\0';
	return copy;
}

void sample_put(struct sample *s, const char *name, const char *text, size_t size)
{
	size_t i = 0;

	while (i < s->files && strcmp(s->file[i].name, name) != 0)
		i++;
	assert_true(i < SAMPLE_FILES_MAX);
	if (i == s->files) {
		s->owned[s->files++] = NULL;
		s->file[i].name = copy_bytes(name, strlen(name));
	}
	free(s->owned[i]);
	s->file[i].size = size > 0 ? size : strlen(text);
	s->owned[i] = copy_bytes(text, s->file[i].size);
	s->file[i].data = s->owned[i];
}

static void read_one(struct sample *s, const char *directory, const char *name)
{
	static char bytes[GUIDE_FILE_MAX];
	char path[4096];
	FILE *f;
	size_t n;

	snprintf(path, sizeof path, "%s/%s", directory, name);
	f = fopen(path, "rb");
	assert_non_null(f);
	n = fread(bytes, 1, sizeof bytes, f);
	fclose(f);
	sample_put(s, name, bytes, n);
}

void sample_read(struct sample *s, const char *directory)
{
	DIR *dir = opendir(directory);
	const struct dirent *e;

	memset(s, 0, sizeof *s);
	assert_non_null(dir);
	while ((e = readdir(dir)) != NULL)
		if (strstr(e->d_name, ".xml") || strstr(e->d_name, ".rng"))
			read_one(s, directory, e->d_name);
	closedir(dir);
}

void sample_small(struct sample *s)
{
	memset(s, 0, sizeof *s);
	read_one(s, sample_directory(), "covering.rng");
	sample_put(s, "barn.xml", barn, 0);
	sample_put(s, "nest.xml", nest, 0);
	sample_put(s, "common.xml", common, 0);
	sample_put(s, "sources.xml", sources, 0);
}

void sample_edit(struct sample *s, const char *name, const char *from, const char *to)
{
	for (size_t i = 0; i < s->files; i++) {
		const char *at;
		char *text;
		size_t head;

		if (strcmp(s->file[i].name, name) != 0)
			continue;
		at = strstr(s->file[i].data, from);
		if (!at)
			fail_msg("%s does not hold %s", name, from);
		head = (size_t)(at - s->file[i].data);
		text = malloc(s->file[i].size + strlen(to) + 1);
		assert_non_null(text);
		memcpy(text, s->file[i].data, head);
		strcpy(text + head, to);
		strcat(text, at + strlen(from));
		sample_put(s, name, text, 0);
		free(text);
		return;
	}
	fail_msg("no file %s", name);
}

void sample_free(struct sample *s)
{
	for (size_t i = 0; i < s->files; i++) {
		free(s->owned[i]);
		free((char *)(uintptr_t)s->file[i].name);
	}
	s->files = 0;
}

struct guide_library *sample_open(const struct sample *s, struct problem_list *problems)
{
	memset(problems, 0, sizeof *problems);
	return guide_open_memory(s->file, s->files, problems);
}

static void see(void *context, const struct guide_block *b)
{
	static const char *const kind[] = {"title", "heading", "paragraph",
					   "step",  "bullet",  "caution"};
	struct seen *seen = context;

	assert_true(seen->length < SEEN_MAX - 8192);
	seen->blocks++;
	seen->length += (size_t)snprintf(
		seen->text + seen->length, SEEN_MAX - seen->length, "%s %d|%s|%s|%s|%s|%s\n",
		kind[b->kind], b->kind == GUIDE_STEP ? b->number : b->level, b->section, b->label,
		b->text, guide_status_text(b->status), b->source);
}

struct guide_sink seen_sink(struct seen *seen)
{
	seen->length = seen->blocks = 0;
	seen->text[0] = '\0';
	return (struct guide_sink){see, seen};
}

struct guide_sizes sample_sizes(void)
{
	struct guide_sizes s;

#define G(member, name, style, meaning) s.member = 0.3;
	GUIDE_SIZES(G)
#undef G
	s.pitch = atan(5.0 / 12.0);
	s.pipe_temperature = 420.0;
	s.feet = 12;
	s.pipes = 2;
	s.course = 11;
	s.courses_to_open = 2;
	s.ice_rolls = 2;
	return s;
}
