#!/usr/bin/env bash
# SPDX-License-Identifier: LGPL-2.1-or-later
# Makes the zip that users install, of what is on disk now, committed or not, and leaves the repository as it is.
#   bash tests/installed/zip.sh FILE.zip [FOLDER]   all of it lies in FOLDER (VeneerLayup)
# It is what `git archive` makes of a commit: files go into an index and a store of objects that are thrown away. Where
# there is no repository, as in the roots of .ci, picked.py reads the same rules.
set -euo pipefail
[[ $# -ge 1 ]] || { echo "bash tests/installed/zip.sh FILE.zip [FOLDER]" >&2; exit 2; }
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd) file=$(realpath "$1") folder=${2:-VeneerLayup}
cd "$here/../.."
if ! [[ -e .git ]] || ! command -v git >/dev/null; then
  exec /usr/bin/python3 "$here/picked.py" "$file" "$folder"
fi
there=$(git rev-parse --absolute-git-dir)
scratch=$(mktemp -d "${TMPDIR:-/tmp}/veneerwb.XXXXXX")
trap 'rm -rf "$scratch"' EXIT
[[ ! -e $there/index ]] || cp "$there/index" "$scratch/index" # what it knows of unchanged files spares reading them
mkdir "$scratch/objects"
export GIT_INDEX_FILE=$scratch/index GIT_OBJECT_DIRECTORY=$scratch/objects GIT_ALTERNATE_OBJECT_DIRECTORIES=$there/objects
git -c core.safecrlf=false add --all .
git archive --format=zip --prefix="$folder/" --output="$file" "$(git write-tree)"
