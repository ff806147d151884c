#!/usr/bin/env bash
# SPDX-License-Identifier: LGPL-2.1-or-later
# Runs a command on a copy of this checkout, in a root of another Debian, which is built once and kept.
#   bash .ci/root.sh SUITE [COMMAND...]   SUITE: bookworm (FreeCAD 0.20.2), trixie (1.0.0), forky (1.1.3)
# Leaves with COMMAND's status; with 77, and the reason in its last line, where the root cannot be had: that takes
# root's rights, mounts, mmdebstrap and a mirror. VENEERWB_ROOTS is where roots are kept, /var/tmp/veneerwb-roots if not
# set, some 3 GB each. One command at a time runs in a root; the others wait.
#
# What is mounted and started for a root belongs to name spaces that end with the process that made them, however that
# ends. A root is built beside and renamed. The copy holds what the checkout holds (no .git, no .deps, no out); of the
# one before only .deps stays, so that set-up need not do it all again.
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/../resources/setup.sh"
suite=${1:?bookworm, trixie or forky}; shift
roots=${VENEERWB_ROOTS:-/var/tmp/veneerwb-roots}
packages=("${debian_packages[@]}" ca-certificates)
home=$roots/$suite-$(printf '%s\n' "${packages[@]}" | cksum | cut -d ' ' -f 1) # another list, another root
settings=(/etc/resolv.conf /etc/pip.conf /etc/xdg/pip /root/.config/pip /root/.pip /etc/ssl/certs/ca-certificates.crt)

skip() { printf '%s\n' "$1"; exit 77; }

enclosed() { unshare --mount --pid --fork --kill-child --mount-proc "$@"; } # in name spaces of its own

mirror() { # the first that apt knows, whichever way its sources are written; the security updates have no suite in it
  apt-get indextargets --format '$(REPO_URI)' 'Created-By: Packages' | grep -v security | head -n 1
}

have_mmdebstrap() {
  command -v mmdebstrap >/dev/null || { apt-get update -q && apt-get install -y -q --no-install-recommends mmdebstrap; }
}

build() {
  echo "== building a root of $suite"
  have_mmdebstrap || skip "mmdebstrap cannot be had"
  local from; from=$(mirror)
  [[ -n $from ]] || skip "apt knows no mirror"
  rm -rf --one-file-system "$roots/$suite"-* "$roots/$suite.new"
  enclosed mmdebstrap --mode=root --variant=minbase --include="$(IFS=,; echo "${packages[*]}")" --dpkgopt=force-unsafe-io \
    --skip=cleanup/apt/lists --aptopt='Acquire::Check-Valid-Until "false"' "$suite" "$roots/$suite.new" "deb $from $suite main" </dev/null 2>&1 |
    tee "$roots/$suite.built" || skip "its packages cannot be had: $(grep -m 1 '^E: ' "$roots/$suite.built")"
  mv "$roots/$suite.new" "$home"
}

bring() { # the checkout and the machine's settings
  mkdir -p "$home/src"
  find "$home/src" -mindepth 1 -maxdepth 1 ! -name .deps -exec rm -rf {} +
  tar -C "$root" -c --exclude=./.git --exclude=./.deps --exclude=./out --exclude=__pycache__ . | tar -C "$home/src" -x
  local one
  for one in "${settings[@]}"; do
    [[ ! -e $one ]] || { rm -rf "$home$one"; mkdir -p "$(dirname "$home$one")"; cp -rL "$one" "$home$one"; }
  done
}

[[ $(id -u) == 0 ]] || skip "a root takes root's rights"
mkdir -p "$roots" 2>/dev/null && [[ -w $roots ]] || skip "$roots cannot be written"
enclosed mount --bind "$roots" "$roots" 2>/dev/null || skip "this machine refuses mounts"
exec 8>"$roots/$suite.lock"; flock 8
[[ -e $home ]] || build
[[ $# -gt 0 ]] || exit 0
bring
# Of this environment nothing but where packages come from and how tests run.
kept='^((https?|no)_proxy|PIP_(CERT|DEFAULT_TIMEOUT|(EXTRA_)?INDEX_URL|TRUSTED_HOST)|OMP_NUM_THREADS|VENEERWB_(GUI_SECONDS|ONE_AT_A_TIME))='
mapfile -t passed < <(env | grep -iE "$kept" || true)
# shellcheck disable=SC2016
exec unshare --mount --pid --fork --kill-child bash -c 'set -e; home=$1; shift
  for one in dev sys; do mount --rbind "/$one" "$home/$one"; done
  mount -t proc proc "$home/proc"
  chroot "$home" env -i HOME=/root PATH=/usr/sbin:/usr/bin:/sbin:/bin LANG=C.UTF-8 "$@"' \
  bash "$home" "${passed[@]}" sh -c 'cd /src && "$@"' sh "$@" </dev/null
