/* SPDX-License-Identifier: MIT */
/* One claim of the library turned into words. Private to the guide. */
#ifndef RP_GUIDE_CLAIM_H
#define RP_GUIDE_CLAIM_H

#include "guide/fill.h"
#include "guide/library.h"

enum guide_status claim_status(const xmlNode *node);
/* Titles of the sources and the clause, into buf: "Title; other title, R905.2.2". "" if there is
 * none. */
const char *claim_source(const struct guide_library *lib, const xmlNode *node, char *buf,
			 size_t size);

/* Whether slope-from and slope-below let a claim hold at this pitch; true while it is unknown
 * (NAN). */
bool claim_holds(const xmlNode *node, double pitch);

/* The texts below begin with the limit of slope where the pitch is not known. False if the claim
   does not hold at the job's pitch, or says nothing. */
/* Text of a claim: as written, or with/else. */
bool claim_text(const xmlNode *node, const struct guide_request *request, char *buf, size_t size);
/* `at least 4 in. Note.`; the job's own size where it is known. */
bool claim_extent(const xmlNode *extent, const struct guide_request *request, char *buf,
		  size_t size);
/* `2.2 psf to 4 psf. Note.` */
bool claim_quantity(const xmlNode *quantity, const struct guide_request *request, char *buf,
		    size_t size);

#endif
