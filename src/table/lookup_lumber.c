/* SPDX-License-Identifier: MIT */
/* Design values of dimension lumber: Table 4A, or 4B for Southern Pine, with the size factor. */
#include "table/lookup_wood.h"

#include <stddef.h>
#include <string.h>

#include "quantity/quantity.h"
#include "table/key.h"

static const char southern_pine[] = "Southern Pine";

/* Dressed pieces are thinner than they are called: a nominal 2 is 1.5 in, a 4 is 3.5 in (PS 20).
   Thinner than 1.5 in or thicker than 4 in is not dimension lumber. */
static int nominal_thickness(double b_in)
{
	if (!at_least(b_in, 1.5) || !at_most(b_in, 4.0))
		return 0;
	return at_most(b_in, 2.0) ? 2 : at_most(b_in, 3.0) ? 3 : 4;
}

/* The smallest listed nominal width that holds the depth; 14 stands for 14 in and wider. A dressed
   2x4 is 3.5 in deep. */
static int nominal_width(double d_in)
{
	static const int listed[] = {4, 5, 6, 8, 10, 12};

	if (!at_least(d_in, 3.5))
		return 0;
	for (size_t i = 0; i < sizeof listed / sizeof *listed; i++)
		if (at_most(d_in, listed[i]))
			return listed[i];
	return 14;
}

const struct lumber_section_row *lumber_section_row(const char *size)
{
	for (size_t i = 0; i < TABLE_LUMBER_SECTION_COUNT; i++)
		if (same_key(table_lumber_section[i].size, size))
			return &table_lumber_section[i];
	return NULL;
}

static const struct lumber_size_factor_row *
size_factor_row(enum lumber_size_factor_size_class size_class, int thickness, int width)
{
	for (size_t i = 0; i < TABLE_LUMBER_SIZE_FACTOR_COUNT; i++) {
		const struct lumber_size_factor_row *r = &table_lumber_size_factor[i];

		if (r->size_class == size_class && r->width_in == width &&
		    r->thickness_from_in <= thickness && thickness <= r->thickness_to_in)
			return r;
	}
	return NULL;
}

static enum lumber_size_factor_size_class size_class_4a(enum lumber_4a_size_class c)
{
	switch (c) {
	case LUMBER_4A_SIZE_CLASS_STUD:
		return LUMBER_SIZE_FACTOR_SIZE_CLASS_STUD;
	case LUMBER_4A_SIZE_CLASS_LIGHT_FRAMING:
		return LUMBER_SIZE_FACTOR_SIZE_CLASS_LIGHT_FRAMING;
	case LUMBER_4A_SIZE_CLASS_UTILITY:
		return LUMBER_SIZE_FACTOR_SIZE_CLASS_UTILITY;
	case LUMBER_4A_SIZE_CLASS_STRUCTURAL:
	case LUMBER_4A_SIZE_CLASS_COUNT:
		break;
	}
	return LUMBER_SIZE_FACTOR_SIZE_CLASS_STRUCTURAL;
}

/* Copies the members that both tables have. */
#define TAKE_VALUES(out, r)                                                                        \
	do {                                                                                       \
		(out)->grade = (r)->grade;                                                         \
		(out)->Fb_psi = (r)->Fb_psi;                                                       \
		(out)->Ft_psi = (r)->Ft_psi;                                                       \
		(out)->Fv_psi = (r)->Fv_psi;                                                       \
		(out)->Fc_perp_psi = (r)->Fc_perp_psi;                                             \
		(out)->Fc_psi = (r)->Fc_psi;                                                       \
		(out)->E_psi = (r)->E_psi;                                                         \
		(out)->Emin_psi = (r)->Emin_psi;                                                   \
		(out)->G = (r)->G;                                                                 \
		(out)->status = (r)->status;                                                       \
		(out)->source = (r)->source;                                                       \
		(out)->note = (r)->note;                                                           \
	} while (0)

static bool take_size_factor(struct lumber *out, const struct lumber_size_factor_row *CF)
{
	if (CF == NULL)
		return false;
	out->CF_Fb = CF->CF_Fb;
	out->CF_Ft = CF->CF_Ft;
	out->CF_Fc = CF->CF_Fc;
	out->CF_status = CF->status;
	out->CF_source = CF->source;
	return true;
}

/* The rows of a species group in Table 4A. */
struct group {
	const struct lumber_4a_row *row;
	size_t count;
};

/* By halves: the table is sorted by species. Count 0 if it is not listed. */
static struct group find_group(const char *species)
{
	struct group g = {NULL, 0};
	size_t low = 0, high = TABLE_LUMBER_4A_COUNT;

	while (low < high) {
		const size_t middle = low + (high - low) / 2;

		if (strcmp(table_lumber_4a[middle].species, species) < 0)
			low = middle + 1;
		else
			high = middle;
	}
	g.row = &table_lumber_4a[low];
	while (low + g.count < TABLE_LUMBER_4A_COUNT && same_key(g.row[g.count].species, species))
		g.count++;
	return g;
}

static bool find_4a(struct group group, const char *grade, int thickness, int width,
		    struct lumber *out)
{
	for (size_t i = 0; i < group.count; i++) {
		const struct lumber_4a_row *r = &group.row[i];

		if (!same_key(r->grade, grade))
			continue;
		out->species = r->species;
		TAKE_VALUES(out, r);
		return take_size_factor(
			out, size_factor_row(size_class_4a(r->size_class), thickness, width));
	}
	return false;
}

static bool find_4b(const char *grade, int thickness, int width, struct lumber *out)
{
	/* Wider than 12 in takes a part of the 12 in values (adjustment factors of Table 4B). */
	const int listed = width > 12 ? 12 : width;

	for (size_t i = 0; i < TABLE_LUMBER_4B_COUNT; i++) {
		const struct lumber_4b_row *r = &table_lumber_4b[i];

		if (!same_key(r->grade, grade) || listed < r->width_from_in ||
		    listed > r->width_to_in)
			continue;
		out->species = southern_pine;
		TAKE_VALUES(out, r);
		return take_size_factor(out,
					size_factor_row(LUMBER_SIZE_FACTOR_SIZE_CLASS_SOUTHERN_PINE,
							thickness, width));
	}
	return false;
}

/* The grade as written, else as an alias names it; an alias may name another alias once: #2, No.2,
   No.1/No.2. A group without rows in 4A is Southern Pine. */
static bool find_grade(struct group group, const char *grade, int thickness, int width, int aliases,
		       struct lumber *out)
{
	const bool found = group.count == 0 ? find_4b(grade, thickness, width, out)
					    : find_4a(group, grade, thickness, width, out);

	if (found || aliases == 0)
		return found;
	for (size_t i = 0; i < TABLE_LUMBER_GRADE_ALIAS_COUNT; i++)
		if (same_key(table_lumber_grade_alias[i].alias, grade) &&
		    find_grade(group, table_lumber_grade_alias[i].grade, thickness, width,
			       aliases - 1, out))
			return true;
	return false;
}

bool lumber_find(const char *species, const char *grade, double b_in, double d_in,
		 struct lumber *out)
{
	const char *name = wood_species_name(species);
	const int thickness = nominal_thickness(b_in), width = nominal_width(d_in);
	struct group group;
	struct lumber found;

	if (name == NULL || thickness == 0 || width == 0)
		return false;
	group = find_group(name);
	if (group.count == 0 && !same_key(name, southern_pine))
		return false;
	memset(&found, 0, sizeof found);
	if (!find_grade(group, grade, thickness, width, 2, &found))
		return false;
	*out = found;
	return true;
}
