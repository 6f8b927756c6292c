/* SPDX-License-Identifier: MIT */
/* Chunks in a chain; a piece larger than a chunk gets a chunk of its own. */
#include "report/arena.h"

#include <assert.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#define CHUNK ((size_t)32 * 1024)

struct chunk {
	struct chunk *next;
	size_t used, size; /* bytes behind this head */
	max_align_t bytes[];
};

struct arena {
	struct allocator from;
	struct chunk *chunk; /* newest first */
	size_t cap, total;
};

static void *take_malloc(void *ctx, size_t size)
{
	(void)ctx;
	return malloc(size);
}

static void give_free(void *ctx, void *piece)
{
	(void)ctx;
	free(piece);
}

static const struct allocator heap = { take_malloc, give_free, NULL };

struct arena *arena_create(size_t cap, const struct allocator *allocator)
{
	const struct allocator from = allocator ? *allocator : heap;
	struct arena *a = from.take(from.ctx, sizeof *a);

	if (!a)
		return NULL;
	*a = (struct arena){ .from = from, .cap = cap, .total = sizeof *a };
	return a;
}

void arena_destroy(struct arena *a)
{
	if (!a)
		return;
	const struct allocator from = a->from;

	for (struct chunk *c = a->chunk, *next; c; c = next) {
		next = c->next;
		from.give(from.ctx, c);
	}
	from.give(from.ctx, a);
}

static struct chunk *add_chunk(struct arena *a, size_t least)
{
	const size_t size = least > CHUNK ? least : CHUNK;

	if (a->total > a->cap || size + sizeof(struct chunk) > a->cap - a->total)
		return NULL;
	struct chunk *c = a->from.take(a->from.ctx, sizeof *c + size);

	if (!c)
		return NULL;
	*c = (struct chunk){ .next = a->chunk, .size = size };
	a->chunk = c;
	a->total += sizeof *c + size;
	return c;
}

/* Where the next piece starts: on a multiple of step. NULL if there is no room for it. */
static unsigned char *place(struct arena *a, size_t size, size_t step)
{
	struct chunk *c = a->chunk;

	if (size > a->cap || size > SIZE_MAX - step)
		return NULL;
	const size_t skip = c ? (step - c->used % step) % step : 0;

	if (!c || c->used + skip > c->size || size > c->size - c->used - skip) {
		c = add_chunk(a, size);
		if (!c)
			return NULL;
	} else {
		c->used += skip;
	}
	unsigned char *const piece = (unsigned char *)c->bytes + c->used;

	c->used += size;
	return piece;
}

void *arena_take(struct arena *a, size_t size)
{
	assert(a);
	unsigned char *const piece = place(a, size, sizeof(max_align_t));

	return piece ? memset(piece, 0, size) : NULL;
}

char *arena_text(struct arena *a, size_t size)
{
	assert(a);
	return (char *)place(a, size, 1);
}

size_t arena_size(const struct arena *a)
{
	return a->total;
}
