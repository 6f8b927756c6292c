/* SPDX-License-Identifier: MIT */
/* What every result says about itself, in every format. */
#ifndef RP_REPORT_CAUTION_H
#define RP_REPORT_CAUTION_H

/* Follows the verdict of a check, and every number that another command prints. */
extern const char caution_result[];
/* On working on a roof; NULL at the end. Printed wherever a guide or a list of attachments is. */
extern const char *const caution_roof_work[];

#endif
