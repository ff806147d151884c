#!/usr/bin/env bash
# SPDX-License-Identifier: LGPL-2.1-or-later
# Runs the tests, ring by ring; every ring runs even if one fails.
#   bash tests/run.sh                 all rings
#   bash tests/run.sh RING [ARGS...]  one of lint, core, host, gui; ARGS go to pytest (or to ruff)
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/../resources/setup.sh"
ring=${1:-all}; shift || true
case $ring in all | lint | core | host | gui) ;; *) stop "No ring is called $ring: lint, core, host or gui." ;; esac
set_up
private_home
cd "$root"

folders() { # those of the named folders of tests/ that hold tests
  local name
  for name in "$@"; do
    [[ -z $(find "tests/$name" -name 'test_*.py' -print -quit 2>/dev/null) ]] || echo "tests/$name"
  done
}

lint() {
  [[ -x $deps/bin/ruff ]] || { echo "ruff is not here: not linted"; return 2; }
  "$deps/bin/ruff" check --no-cache --output-format concise "$@" .
}

core() { # without FreeCAD: the core, checks against other libraries, pictures
  local where; mapfile -t where < <(folders core outside paint)
  [[ ${#where[@]} -gt 0 ]] || { echo "no tests yet"; return 2; }
  "$python" -m pytest "${where[@]}" "$@"
}

host() { # inside FreeCAD, without a window
  [[ -n $(folders host) ]] || { echo "no tests yet"; return 2; }
  export VENEERWB_PYTEST_ARGS="${*@Q}" VENEERWB_RESULT=$scratch/host-result
  freecadcmd tests/host/run_host.py </dev/null || return 1
  [[ -e $VENEERWB_RESULT ]] || { echo "FreeCAD left without running the tests"; return 1; }
}

gui() { # inside FreeCAD, with its window on a screen of its own
  [[ -n $(folders gui) ]] || { echo "no tests yet"; return 2; }
  local status=0 seconds=${VENEERWB_GUI_SECONDS:-900}
  export VENEERWB_PYTEST_ARGS="${*@Q}" VENEERWB_RESULT=$scratch/gui-result VENEERWB_LOG=$scratch/gui.log
  export VENEERWB_GUI_SECONDS=$seconds
  start_screen || { echo "Xvfb did not start"; return 1; }
  # The window stops itself when the time is up and says where it hung; timeout is for a host that never got so far.
  env -u QT_QPA_PLATFORM DISPLAY=":$(cat "$scratch/display")" timeout -k 10 "$((seconds + 60))" \
    freecad tests/gui/run_gui.py </dev/null >"$scratch/gui.out" 2>&1 || status=$?
  kill "$screen"
  cat "$VENEERWB_LOG" 2>/dev/null || true
  [[ -e $VENEERWB_RESULT && $status == 0 ]] ||
    { echo "FreeCAD ended with status $status; its last words:"; tail -n 20 "$scratch/gui.out"; return 1; }
}

failed=0 summary=
for name in lint core host gui; do
  [[ $ring == all || $ring == "$name" ]] || continue
  started=$SECONDS status=0
  printf '\n== %s\n' "$name"
  "$name" "$@" || status=$?
  case $status in 0) said=passed ;; 2) said="not run" ;; *) said=FAILED failed=1 ;; esac
  summary+="  $name: $said ($((SECONDS - started)) s)"$'\n'
done
printf '\n%s' "$summary"
exit "$failed"
