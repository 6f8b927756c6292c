/* SPDX-License-Identifier: MIT */
/* The element table. */
#include "job/element.h"

#include <string.h>

#include "job/job.h"

#define SINGLE(name, parent, first, last, meaning)                                                 \
	{                                                                                          \
		name, ELEMENT_##parent, 1, 0, 0, 0, FIELD_##first, FIELD_##last, meaning           \
	}
#define REPEATED(name, parent, max, array, count, first, last, meaning)                            \
	{                                                                                          \
		name, ELEMENT_##parent, max, offsetof(struct job, array),                          \
			sizeof(((struct job *)0)->array[0]), offsetof(struct job, count),          \
			FIELD_##first, FIELD_##last, meaning                                       \
	}

const struct element_row element_table[ELEMENT_COUNT] = {
	[ELEMENT_JOB] = SINGLE("job", JOB, JOB_TITLE, JOB_UNITS, "The root: one job."),
	[ELEMENT_SITE] = SINGLE("site", JOB, SITE_CODE, SITE_PARCEL,
				"Where the house stands and what the code asks there."),
	[ELEMENT_BUILDING] = SINGLE("building", JOB, BUILDING_FORM, BUILDING_LINE_RIGHT,
				    "The house as a block."),
	[ELEMENT_ROOF] = SINGLE("roof", JOB, ROOF_PITCH, ROOF_WALL,
				"The roof plane that carries the array."),
	[ELEMENT_JOINT] = REPEATED("joint", ROOF, JOINT_MAX, roof.joint, roof.measured_joints, JOINT_COURSE,
				   JOINT_AT, "One measured joint of the covering beside a foot, inside `roof`."),
	[ELEMENT_FRAMING] =
		SINGLE("framing", JOB, FRAMING_KIND, FRAMING_ENDS_HELD, "What carries the roof."),
	[ELEMENT_RAFTER] = REPEATED("rafter", FRAMING, RAFTER_MAX, framing.at, framing.measured,
				    RAFTER_AT, RAFTER_AT, "One measured rafter, inside `framing`."),
	[ELEMENT_SUPPORT] = REPEATED("support", FRAMING, SUPPORT_MAX, framing.support, framing.supports,
				     SUPPORT_AT, SUPPORT_AT,
				     "One more support below the rafters, above `framing.inner-support`, inside `framing`."),
	[ELEMENT_COLLECTOR] = SINGLE("collector", JOB, COLLECTOR_KIND, COLLECTOR_HARDWARE_WEIGHT,
				     "The collectors and where they lie."),
	[ELEMENT_RAIL] = SINGLE("rail", JOB, RAIL_KIND, RAIL_SPLICE_MOMENT,
				"What the collectors rest on."),
	[ELEMENT_MOUNT] = SINGLE("mount", JOB, MOUNT_SEAT, MOUNT_BLOCK_REPORT,
				 "The feet that carry the rails or the collectors."),
	[ELEMENT_FASTENER] = SINGLE("fastener", JOB, FASTENER_KIND, FASTENER_STEEL_STRENGTH,
				    "What holds a foot to the rafter."),
	[ELEMENT_SNOW] = SINGLE("snow", JOB, SNOW_CT, SNOW_DRIFT_SOURCE,
				"Snow: local rules, and what lies above and below the array."),
	[ELEMENT_LIVE] = SINGLE("live", JOB, LIVE_RULE, LIVE_WORKER, "People on the roof."),
	[ELEMENT_EARTHQUAKE] = SINGLE("earthquake", JOB, EARTHQUAKE_CATEGORY, EARTHQUAKE_RMU,
				      "How the ground shakes, for the force on array and feet."),
	[ELEMENT_EXISTING] = SINGLE("existing", JOB, EXISTING_WEIGHT, EXISTING_IRC_HOUSE,
				    "The building as it stands, for the rules on existing buildings."),
	[ELEMENT_METALS] = SINGLE("metals", JOB, METALS_FLASHING, METALS_TREATED_WOOD,
				  "What flashings, feet, fasteners and pipes are made of."),
	[ELEMENT_HILL] = SINGLE("hill", JOB, HILL_SHAPE, HILL_UPPER_HALF,
				"A hill, ridge or escarpment under the house."),
	[ELEMENT_PIPE] = REPEATED("pipe", JOB, PIPE_MAX, pipe, pipes, PIPE_DIAMETER, PIPE_OFFSET,
				  "Pipes or a cable of one kind that go through the roof."),
	[ELEMENT_COEFFICIENT] = REPEATED("coefficient", JOB, COEFFICIENT_MAX, coefficient,
					 coefficients, COEFFICIENT_ZONE, COEFFICIENT_SOURCE,
					 "A pressure coefficient read from the printed standard."),
	[ELEMENT_OBSTACLE] = REPEATED("obstacle", JOB, OBSTACLE_MAX, obstacle, obstacles, OBSTACLE_X,
				      OBSTACLE_CLEARANCE,
				      "Something on the roof that no foot may stand on."),
	[ELEMENT_RAIL_JOINT] = REPEATED("rail-joint", JOB, RAIL_JOINT_MAX, rail_joint, rail_joints,
					RAIL_JOINT_LINE, RAIL_JOINT_AT,
					"Where a rail is joined, if not where the check would join it."),
};

enum element element_find(const char *name)
{
	size_t e = 0;

	while (e < ELEMENT_COUNT && strcmp(element_table[e].name, name) != 0)
		e++;
	return (enum element)e;
}

enum element element_of(enum field_id id)
{
	size_t e = 0;

	while (e + 1 < ELEMENT_COUNT && id > element_table[e].last)
		e++;
	return (enum element)e;
}

const struct field *element_field(enum element e, const char *attribute)
{
	for (size_t i = element_table[e].first; i <= (size_t)element_table[e].last; i++)
		if (strcmp(field_table[i].attribute, attribute) == 0)
			return &field_table[i];
	return NULL;
}
