/* SPDX-License-Identifier: MIT */
/* How many feet each line needs by itself. Single feet tell less than the rail as a whole does, and
   lines that are tried one at a time are few beside all that can be put together from them. */
#include "roof/search.h"

void search_raise(struct search_state *s, const int least[])
{
	for (int i = s->p->lines - 1; i >= 0; i--) {
		if (s->p->line[i].copies < 0 && s->least[i] < least[i])
			s->least[i] = least[i];
		s->rest[i] = s->rest[i + 1] + s->least[i];
	}
}

bool search_alone(struct search_state *s)
{
	int least[SEARCH_LINE_MAX] = {0};

	for (int i = 0; i < s->p->lines; i++) {
		if (s->p->line[i].copies >= 0)
			continue;
		least[i] = s->least[i];
		while (s->rest[0] <= s->wanted && !search_stands(s, i, least[i])) {
			if (s->left <= 0)
				return true; /* not known; the search is over */
			least[i] += s->repeats[i];
			search_raise(s, least);
		}
	}
	return s->rest[0] <= s->wanted;
}
