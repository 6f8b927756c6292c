/* SPDX-License-Identifier: MIT */
/* The parts of a check in JSON, each in its own file. Internal to src/report. Lengths on the roof
   come in inches or millimetres, the others in the unit that stands beside each value. */
#ifndef RP_REPORT_JSON_PART_H
#define RP_REPORT_JSON_PART_H

#include "check/result.h"
#include "report/json_value.h"

/* json_inputs.c */
void put_inputs(struct json *j, json_t *root, const struct job *job);
/* json_roof.c: the plane, its zones, the array upon it. */
void put_roof(struct json *j, json_t *root, const struct result *r, enum fastener_kind kind);
/* json_loads.c: wind, snow, dead and live load; screw and lumber. */
void put_rack(struct json *j, json_t *wind, const struct wind_result *w);
void put_loads(struct json *j, json_t *root, const struct job *job, const struct result *r);
void put_parts(struct json *j, json_t *root, const struct result *r);
/* json_flashing.c: sizes for the flashing notes. */
void put_flashing(struct json *j, json_t *root, const struct job *job, const struct result *r);
/* json_search.c */
void put_search(struct json *j, json_t *root, const struct result *r);
void put_blocks(struct json *j, json_t *root, const struct result *r);
/* json_pass.c */
void put_passes(struct json *j, json_t *root, const struct result *r);
void put_pipe_holes(struct json *j, json_t *root, const struct job *job, const struct result *r);
/* json_member.c */
void put_lines(struct json *j, json_t *parent, const struct pass *pass);
void put_rafters(struct json *j, json_t *parent, const struct pass *pass);
/* Those checks of one thing that were rated. */
void put_checks(struct json *j, json_t *parent, const char *key,
                const struct check_value check[CHECK_COUNT]);
/* "pull-out" as "withdrawal": the id of a check. */
void put_check(struct json *j, json_t *object, const char *key, enum check_id id);
/* The worst of those checks and its ratio; null both where none was rated. */
void put_governs(struct json *j, json_t *object, const struct check_value check[CHECK_COUNT], double ratio,
		 enum check_id id);
/* json_beam.c: the governing rafter and rail with their loads. */
void put_beams(struct json *j, json_t *root, const struct result *r);
/* json_steps.c: the calculation, section by section. */
void put_steps(struct json *j, json_t *root, const struct job *job, const struct result *r);

#endif
