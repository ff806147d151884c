#!/usr/bin/env bash
# SPDX-License-Identifier: LGPL-2.1-or-later
# Runs the tests; every ring runs even if one fails. Where there are two cores, gui runs beside core and host, unless
# VENEERWB_ONE_AT_A_TIME is set.
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
  [[ -x $deps/bin/ruff ]] || { echo "ruff is not here: not linted"; return 77; }
  "$deps/bin/ruff" check --no-cache --output-format concise "$@" .
}

core() { # without FreeCAD: the core, checks against other libraries, pictures
  local where; mapfile -t where < <(folders core outside paint)
  [[ ${#where[@]} -gt 0 ]] || { echo "no tests yet"; return 77; }
  "$python" -m pytest "${where[@]}" "$@"
}

host() { # inside FreeCAD, without a window
  [[ -n $(folders host) ]] || { echo "no tests yet"; return 77; }
  home_in "$scratch/host" # settings that a window saves are not this ring's
  export VENEERWB_PYTEST_ARGS="${*@Q}" VENEERWB_RESULT=$scratch/host-result
  freecadcmd tests/host/run_host.py </dev/null || return 1
  [[ -e $VENEERWB_RESULT ]] || { echo "FreeCAD left without running the tests"; return 1; }
}

gui() { # inside FreeCAD, with its window on a screen of its own
  [[ -n $(folders gui) ]] || { echo "no tests yet"; return 77; }
  home_in "$scratch/gui"
  local status=0 seconds=${VENEERWB_GUI_SECONDS:-900}
  export VENEERWB_PYTEST_ARGS="${*@Q}" VENEERWB_RESULT=$scratch/gui-result VENEERWB_LOG=$scratch/gui.log
  export VENEERWB_GUI_SECONDS=$seconds
  start_screen || { echo "Xvfb did not start"; return 1; }
  # The window stops itself when the time is up and says where it hung; timeout is for a host that never got so far.
  env -u QT_QPA_PLATFORM DISPLAY=":$(cat "$scratch/display")" timeout --foreground -k 10 "$((seconds + 60))" \
    freecad tests/gui/run_gui.py </dev/null >"$scratch/gui.out" 2>&1 || status=$?
  kill "$screen"
  cat "$VENEERWB_LOG" 2>/dev/null || true
  [[ -e $VENEERWB_RESULT && $status == 0 ]] ||
    { echo "FreeCAD ended with status $status; its last words:"; tail -n 20 "$scratch/gui.out"; return 1; }
}

run_ring() { # run_ring NAME [ARGS...]: one ring; how it went stands in NAME.went
  local name=$1 started=$SECONDS status=0; shift
  printf '\n== %s\n' "$name"
  "$name" "$@" || status=$?
  echo "$status $((SECONDS - started))" >"$scratch/$name.ended" && mv "$scratch/$name.ended" "$scratch/$name.went"
}

progress() { # how far the rings are that run now
  local name line=
  for name in "${rings[@]}"; do
    [[ -e $scratch/$name.shown && ! -e $scratch/$name.went ]] || continue
    line+=" $name $(cat "$scratch/$name.shown" "$scratch/$name.log" 2>/dev/null | grep -o '[0-9]*%' | tail -n 1 || true)"
  done
  echo "  after $SECONDS s:$line"
}

beside() { # gui, which takes as long as the others, beside them; each ring is shown when it and those before it are done
  local name names
  export OMP_NUM_THREADS=1 # a core each
  set -m                   # and a process group each, so that nothing outlives an interruption
  for names in "lint core host" gui; do
    (set +m; for name in $names; do run_ring "$name" "$@" >"$scratch/$name.shown" 2>&1; done) </dev/null &
    groups+=("-$!")
  done
  set +m
  trap 'trap "" INT TERM HUP; kill -- "${groups[@]}" 2>/dev/null || true; wait; exit 130' INT TERM HUP
  echo "gui runs beside the others; each is shown when it is done"
  for name in "${rings[@]}"; do
    until [[ -e $scratch/$name.went || -z $(jobs -rp) ]]; do
      sleep 1
      ((SECONDS % 20)) || progress
    done
    cat "$scratch/$name.shown" || true
  done
  trap - INT TERM HUP
}

rings=(lint core host gui) groups=() failed=0 summary=
[[ $ring == all ]] || rings=("$ring")
# nproc would count the threads that OpenMP is allowed
if [[ $ring == all && -z ${VENEERWB_ONE_AT_A_TIME:-} && $(env -u OMP_NUM_THREADS -u OMP_THREAD_LIMIT nproc) -gt 1 ]]; then
  beside "$@"
else
  for name in "${rings[@]}"; do run_ring "$name" "$@"; done
fi
for name in "${rings[@]}"; do
  read -r status seconds <"$scratch/$name.went" || status=1 seconds=?
  case $status in 0) said=passed ;; 77) said="not run" ;; *) said=FAILED failed=1 ;; esac
  summary+="  $name: $said ($seconds s)"$'\n'
done
printf '\n%s\n  all of it: %s s\n' "${summary%$'\n'}" "$SECONDS"
exit "$failed"
