#!/bin/sh
# SPDX-License-Identifier: MIT
# mandoc must have nothing to say about the input reference, and print every field of it.
# The file's name ends in the page's section: mandoc compares the two.
dir=$(mktemp -d) || exit 99
trap 'rm -r "$dir"' EXIT
page=$dir/reference.7
printf '.Dd January 1, 2026\n.Dt REFERENCE 7\n.Os\n.Sh NAME\n.Nm reference\n.Nd input reference\n' >"$page" &&
	cat "$1" >>"$page" || exit 99
said=$(mandoc -T lint "$page") || { echo "$said"; exit 1; }
[ -z "$said" ] || { echo "$said"; exit 1; }
for word in 'wind-speed' 'mean-roof-height' 'drilling-tolerance' '85 mph to 250 mph' 'INPUT REFERENCE'; do
	mandoc -T ascii "$page" | sed 's/.'"$(printf '\b')"'//g' | tr -s '[:space:]' ' ' | grep -qF -e "$word" || { echo "no $word"; exit 1; }
done
