#!/usr/bin/env bash
# SPDX-License-Identifier: LGPL-2.1-or-later
# Makes the zip that users install, of what is on disk now, committed or not, and leaves the repository as it is:
#   bash tests/zip.sh FILE.zip [FOLDER]    FOLDER (VeneerLayup) is what all of it lies in
# The same as `git archive` of a commit: files are put into an index and a store of objects that are thrown away.
set -euo pipefail
[[ $# -ge 1 ]] || { echo "bash tests/zip.sh FILE.zip [FOLDER]" >&2; exit 2; }
file=$(realpath "$1") folder=${2:-VeneerLayup}
cd "$(dirname "${BASH_SOURCE[0]}")/.."
there=$(git rev-parse --absolute-git-dir)
scratch=$(mktemp -d "${TMPDIR:-/tmp}/veneerwb.XXXXXX")
trap 'rm -rf "$scratch"' EXIT
[[ ! -e $there/index ]] || cp "$there/index" "$scratch/index" # what it knows of unchanged files spares reading them
mkdir "$scratch/objects"
export GIT_INDEX_FILE=$scratch/index GIT_OBJECT_DIRECTORY=$scratch/objects GIT_ALTERNATE_OBJECT_DIRECTORIES=$there/objects
git -c core.safecrlf=false add --all .
git archive --format=zip --prefix="$folder/" --output="$file" "$(git write-tree)"
