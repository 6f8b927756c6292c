/* SPDX-License-Identifier: MIT */
/* Draws how a mount foot or a pipe goes through a covering, from the layers of the covering
   library: a section or a view from above, to scale, with numbers at the parts and a key in words
   below. A covering that gives no view from above is drawn from the layers of its section. */
#ifndef RP_DETAIL_H
#define RP_DETAIL_H

#include "drawing/drawing.h"
#include "guide/guide.h"

/* Readable on a telephone: text of 3.4 mm on 110 mm, 12 px where the page is 390 px wide. */
#define DETAIL_WIDTH (110 * MM)
#define DETAIL_TEXT (3.4 * MM)

/* True if the library has what detail_draw needs. of: "foot", "pipe" or "wall" (what a refusal
   shows instead, a section only); view: "section" or "plan".
 */
bool detail_known(const struct guide_library *lib, const char *key, const char *of,
		  const char *view);

/* A new drawing, DETAIL_WIDTH wide and as high as it needs. The request's sizes (NULL: none) take
   the place of the usual ones, its pitch that of a usual roof. Title and description are set. NULL
   if the library has no such drawing or memory ran out. */
struct drawing *detail_draw(const struct lettering *lettering, const struct guide_library *lib,
			    const struct guide_request *request, const char *of, const char *view);

#endif
