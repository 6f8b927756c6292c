# SPDX-License-Identifier: MIT
# Sourced by the scripts beside it: installs the Debian packages named, only those that are missing.
# As root directly, else through sudo.

need_packages() {
	missing=""
	for package in "$@"; do
		dpkg-query -W -f '${Status}' "$package" 2>/dev/null | grep -q "install ok installed" ||
			missing="$missing $package"
	done
	[ -z "$missing" ] && return 0
	as_root=""
	if [ "$(id -u)" != 0 ]; then
		command -v sudo >/dev/null || {
			echo "These packages are missing and neither root nor sudo is at hand:$missing" >&2
			exit 1
		}
		as_root="sudo"
	fi
	echo "installing:$missing"
	$as_root apt-get update -qq
	# shellcheck disable=SC2086 # a list of package names
	$as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends $missing >/dev/null
}

build_packages="gcc libc6-dev meson ninja-build pkg-config libxml2-dev zlib1g-dev libjansson-dev libcairo2-dev libpango1.0-dev fonts-dejavu-core"
test_packages="libcmocka-dev libxml2-utils jing default-jre-headless mandoc python3-jsonschema libasan8 libubsan1 poppler-utils librsvg2-bin libglpk-dev liblapack-dev"

# Debian's own tools first, whatever else the machine carries.
PATH=/usr/bin:/bin:$PATH
export PATH
