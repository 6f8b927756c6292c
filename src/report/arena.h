/* SPDX-License-Identifier: MIT */
/* One store for everything that a report needs while it is built: pieces are taken one after
   another and given back all at once. It has a cap, and the allocator under it is a parameter, so
   that a test can count and refuse. */
#ifndef RP_REPORT_ARENA_H
#define RP_REPORT_ARENA_H

#include <stddef.h>

struct allocator {
	void *(*take)(void *ctx, size_t size); /* NULL when there is nothing left */
	void (*give)(void *ctx, void *piece);
	void *ctx;
};

struct arena;

/* An empty arena that will never hold more than `cap` bytes; NULL allocator: malloc and free. NULL
   when memory ran out. */
struct arena *arena_create(size_t cap, const struct allocator *allocator);
void arena_destroy(struct arena *a);

/* `size` bytes, zeroed, aligned for any object; NULL when memory ran out or the cap is reached. */
void *arena_take(struct arena *a, size_t size);
/* `size` bytes as they come, for text: most pieces of a report are a few letters long. NULL as above. */
char *arena_text(struct arena *a, size_t size);
/* Bytes taken from the allocator so far. */
size_t arena_size(const struct arena *a);

#endif
