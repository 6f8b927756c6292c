/* SPDX-License-Identifier: MIT */
/* The bytes of a PDF file as Cairo made them, and what Cairo 1.16 cannot say itself: the language
   of the text, that a reader shows the title, and no date where none is known. That is added as an
   update at the end of the file, in the way PDF provides for (ISO 32000-1, 7.5.6): Cairo's own
   bytes stay as they are. Internal to src/sheet. */
#ifndef RP_SHEET_PDF_BYTES_H
#define RP_SHEET_PDF_BYTES_H

#include <stdbool.h>
#include <stddef.h>
#include <stdio.h>

/* A job with 256 attachments gives less than 2 MiB. */
#define PDF_BYTES_MAX ((size_t)64 << 20)

struct pdf_bytes {
	unsigned char *data;
	size_t size, room;
	bool failed;
};

bool pdf_bytes_add(struct pdf_bytes *b, const void *data, size_t size);
/* 0, or -1 when the stream failed or the file is not as Cairo writes it. */
int pdf_bytes_write(struct pdf_bytes *b, FILE *f, bool without_date);

#endif
