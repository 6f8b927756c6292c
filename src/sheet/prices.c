/* SPDX-License-Identifier: MIT */
#define _POSIX_C_SOURCE 200809L
#include "sheet/prices.h"

#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

/* Digits, a point, up to four more. */
static bool parse_price(const char *text, int64_t *price)
{
	const size_t whole = strspn(text, "0123456789");
	int64_t value = 0, part = PRICE_UNIT / 10;

	if (whole == 0 || whole > 9)
		return false;
	for (size_t i = 0; i < whole; i++)
		value = value * 10 + (text[i] - '0');
	value *= PRICE_UNIT;
	text += whole;
	if (*text == '.') {
		const size_t places = strspn(++text, "0123456789");

		if (places == 0 || places > 4)
			return false;
		for (size_t i = 0; i < places; i++, part /= 10)
			value += part * (text[i] - '0');
		text += places;
	}
	*price = value;
	return *text == '\0';
}

static bool is_known(const char *const *known, const char *item)
{
	for (; *known; known++)
		if (strcmp(*known, item) == 0)
			return true;
	return false;
}

static const char *known_words(const char *const *known, char *buf, size_t size)
{
	size_t n = 0;

	buf[0] = '\0';
	for (; *known && n < size; known++)
		n += (size_t)snprintf(buf + n, size - n, "%s, ", *known);
	snprintf(buf + (n < size ? n : size - 1), n < size ? size - n : 1, "currency");
	return buf;
}

/* Cuts blanks from both ends, in place. */
static char *trimmed(char *text)
{
	size_t n;

	text += strspn(text, " \t");
	n = strlen(text);
	while (n > 0 && strchr(" \t\r", text[n - 1]))
		text[--n] = '\0';
	return text;
}

static void read_line(const char *name, int number, char *line, const char *const *known,
		      struct prices *prices, struct problem_list *problems)
{
	char *comma = strchr(line, ','), words[PROBLEM_TEXT_MAX];
	int64_t price;

	if (!comma) {
		problem_add(problems, PROBLEM_NOT_A_VALUE, name, number, "price", line,
			    "item,price");
		return;
	}
	*comma = '\0';
	const char *item = trimmed(line), *value = trimmed(comma + 1);

	if (strcmp(item, "currency") == 0) {
		if (strlen(value) == 0 || strlen(value) >= sizeof prices->currency ||
		    !problem_text_is_clean(value))
			problem_add(problems, PROBLEM_NOT_A_VALUE, name, number, "currency", value,
				    "up to 7 letters, such as USD");
		else
			snprintf(prices->currency, sizeof prices->currency, "%s", value);
		return;
	}
	if (!is_known(known, item))
		problem_add(problems, PROBLEM_UNKNOWN_FIELD, name, number, item, value,
			    known_words(known, words, sizeof words));
	else if (prices_find(prices, item, &price))
		problem_add(problems, PROBLEM_TWICE, name, number, item, value,
			    "one price for each item");
	else if (!parse_price(value, &price))
		problem_add(problems, PROBLEM_NOT_A_VALUE, name, number, item, value,
			    "a number such as 12.50, without a sign");
	else if (prices->n < PRICES_MAX) {
		snprintf(prices->row[prices->n].item, sizeof prices->row[0].item, "%s", item);
		prices->row[prices->n++].price = price;
	}
}

bool prices_read_memory(const char *name, const char *bytes, size_t size, const char *const *known,
			struct prices *prices, struct problem_list *problems)
{
	const size_t before = problems->count + problems->dropped;
	char line[256];
	int number = 0;

	*prices = (struct prices){0};
	for (size_t at = 0; at < size;) {
		const char *end = memchr(bytes + at, '\n', size - at);
		const size_t n = end ? (size_t)(end - bytes) - at : size - at;

		number++;
		if (n >= sizeof line || memchr(bytes + at, '\0', n)) {
			problem_add(problems, PROBLEM_NOT_A_VALUE, name, number, "price", NULL,
				    "item,price in fewer than 256 characters");
		} else {
			memcpy(line, bytes + at, n);
			line[n] = '\0';
			char *text = trimmed(line);

			if (*text && *text != '#')
				read_line(name, number, text, known, prices, problems);
		}
		at += n + 1;
	}
	return problems->count + problems->dropped == before;
}

static bool read_all(int fd, char *bytes, size_t size, size_t *got)
{
	*got = 0;
	while (*got < size) {
		const ssize_t n = read(fd, bytes + *got, size - *got);

		if (n < 0 && errno != EINTR)
			return false;
		if (n == 0)
			break;
		if (n > 0)
			*got += (size_t)n;
	}
	return true;
}

bool prices_read_file(const char *path, const char *const *known, struct prices *prices,
		      struct problem_list *problems)
{
	const int fd = open(path, O_RDONLY | O_NOCTTY | O_NONBLOCK | O_CLOEXEC);
	struct stat st;
	bool ok = false;
	size_t got;

	if (fd < 0) {
		problem_add(problems, PROBLEM_CANNOT_OPEN, path, 0, NULL, strerror(errno),
			    "a file of prices");
		return false;
	}
	if (fstat(fd, &st) != 0 || !S_ISREG(st.st_mode)) {
		problem_add(problems, PROBLEM_NOT_A_FILE, path, 0, NULL, NULL, "a file of prices");
	} else if (st.st_size > (off_t)PRICES_FILE_MAX) {
		problem_add(problems, PROBLEM_TOO_LARGE, path, 0, NULL, NULL, "64 KiB");
	} else {
		char *bytes = malloc(PRICES_FILE_MAX);

		if (!bytes)
			problem_add(problems, PROBLEM_NO_MEMORY, path, 0, NULL, NULL, NULL);
		else if (!read_all(fd, bytes, PRICES_FILE_MAX, &got))
			problem_add(problems, PROBLEM_CANNOT_READ, path, 0, NULL, strerror(errno),
				    NULL);
		else
			ok = prices_read_memory(path, bytes, got, known, prices, problems);
		free(bytes);
	}
	close(fd);
	return ok;
}

bool prices_find(const struct prices *prices, const char *item, int64_t *price)
{
	for (int i = 0; i < prices->n; i++) {
		if (strcmp(prices->row[i].item, item) == 0) {
			*price = prices->row[i].price;
			return true;
		}
	}
	return false;
}
