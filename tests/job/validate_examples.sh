#!/bin/sh
# SPDX-License-Identifier: MIT
# Every example follows the schema, by both validators. $1: schema, $2: directory of examples.
set -- "$1" "$2"/*.xml
schema=$1
shift
[ -f "$1" ] || { echo "no examples"; exit 1; }
xmllint --nonet --noout --relaxng "$schema" "$@" && jing "$schema" "$@"
