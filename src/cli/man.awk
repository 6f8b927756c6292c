# SPDX-License-Identifier: MIT
# Puts the input reference, made from the field table, into the manual page. First file: the template; second: the reference.
NR == FNR {
	gsub(/@DATADIR@/, datadir)
	template[++lines] = $0
	next
}
{ reference = reference $0 "\n" }
END {
	if (reference == "") {
		print "the input reference is empty" > "/dev/stderr"
		exit 1
	}
	for (i = 1; i <= lines; i++) {
		if (template[i] == "@INPUT_REFERENCE@")
			printf "%s", reference
		else
			print template[i]
	}
}
