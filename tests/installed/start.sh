#!/usr/bin/env bash
# SPDX-License-Identifier: LGPL-2.1-or-later
# Starts FreeCAD as a user has it who installed the addon from a zip, with a home that is made for it and thrown away.
#   bash tests/installed/start.sh ZIP PROBE [PACKAGE...]
# PROBE is a Python file that FreeCAD runs; it writes what it finds to the file VENEERWB_TOLD. With a window where
# DISPLAY is set. PACKAGEs are as if they were not there: another addon in the same home refuses to import them. With
# VENEERWB_CLOCK, a file, Init.py and InitGui.py say there how long they took and what they imported; VENEERWB_STARTS is
# how often it is started. Prints what FreeCAD prints, and leaves with its status.
set -euo pipefail
zip=$(realpath "$1") probe=$(realpath "$2"); shift 2
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
home=$(mktemp -d "${TMPDIR:-/tmp}/veneerwb.XXXXXX")
trap 'rm -rf "$home"' EXIT
for data in FreeCAD FreeCAD/v1-1; do # where the hosts look: up to 1.0, and from 1.1 on
  mod=$home/.local/share/$data/Mod
  mkdir -p "$mod/Refusing" "$home/.config/$data"
  /usr/bin/python3 -m zipfile -e "$zip" "$mod"
  [[ -z ${VENEERWB_CLOCK:-} ]] || /usr/bin/python3 "$here/clocked.py" "$mod"/*/Init.py "$mod"/*/InitGui.py
  echo "import refusing" >"$mod/Refusing/Init.py"
  { cat "$here/refusing.py"; echo "refuse('$*')"; } >"$mod/Refusing/refusing.py"
  cp "$here/user.cfg" "$home/.config/$data/user.cfg"
done
unset XDG_CONFIG_HOME XDG_DATA_HOME XDG_CACHE_HOME FREECAD_USER_HOME FREECAD_USER_DATA PYTHONPATH
export HOME=$home LIBGL_ALWAYS_SOFTWARE=1 QTWEBENGINE_DISABLE_SANDBOX=1 QTWEBENGINE_CHROMIUM_FLAGS=--no-sandbox
host=(freecadcmd "$probe") QT_QPA_PLATFORM=offscreen
[[ -z ${DISPLAY:-} ]] || { host=(freecad "$probe") QT_QPA_PLATFORM=xcb; }
export QT_QPA_PLATFORM
for ((starts = ${VENEERWB_STARTS:-1}; starts > 0; starts--)); do
  timeout -k 5 "${VENEERWB_SECONDS:-100}" "${host[@]}" </dev/null 2>&1
done
