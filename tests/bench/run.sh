#!/usr/bin/env bash
# SPDX-License-Identifier: LGPL-2.1-or-later
# Prints how fast the work is, beside peers timed in the same run, on one thread; and how far it can be trusted:
#   bash tests/bench/run.sh                        recompute, picture, live top; growth with ways
#   bash tests/bench/run.sh growth                 growth with leaves and with pixels
#   bash tests/bench/run.sh registers [FIGURE...]  registers against the truth and OpenCV (minutes a figure)
#   bash tests/bench/run.sh proof [...]            faults named, clean bundles accused (an hour in full)
#   bash tests/bench/run.sh search                 the search for spots: times, the plain way, truth, force (minutes)
#   bash tests/bench/run.sh suggestions            knots and splits suggested
#   bash tests/bench/run.sh sides [FIGURE...]      backs tied, sense proved, wander measured (minutes a figure)
#   bash tests/bench/run.sh shop                   sheets, packet, closing, largest tops
#   bash tests/bench/run.sh startup                what the host's start costs more with the workbench
#   bash tests/bench/run.sh open [window]          opening a document of 48 leaves of 3 megapixels
#   bash tests/bench/run.sh drag                   dragging the wedge of a match in its panel, in a window
#   bash tests/bench/run.sh readme                 all of them, the long ones shortened (some 8 minutes): the tables of
#                                                  README.md and docs/bench.md
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/../../resources/setup.sh"
set_up
private_home
cd "$root"
export OMP_NUM_THREADS=1 VENEERWB_SCREEN=1920x1200

told() { # told HOW FILE: runs a bench inside the host, which says things of its own, and prints what the bench told
  local status=0
  : >"$scratch/report"
  VENEERWB_REPORT=$scratch/report "$1" "$root/tests/bench/$2.py" >"$scratch/told" || status=$?
  cat "$scratch/report"
  return "$status"
}

one() { # one [BENCH [ARGUMENT...]]
  case ${1:-bench} in
    bench) told in_host bench ;;
    shop) told in_host shop ;;
    drag) told in_window drag ;;
    open) if [[ ${2:-} == window ]]; then told in_window open; else told in_host open; fi ;;
    *) PYTHONPATH="$site:$root" "$python" "$root/tests/bench/$1.py" "${@:2}" ;;
  esac
}

readme() { # the tables: every bench, so short that all take some minutes; one that fails is told and the rest go on
  local failed=0 run
  local runs=(bench "open window" open drag shop startup growth "registers --plain --leaves 6 cathedral crotch"
    "proof --logs 1 --clean 2 cathedral burl" "search --candidates 200 --spots 100 --force crotch"
    "sides --logs 1 --scale 2 cathedral" "suggestions 3 cathedral,burl")
  export VENEERWB_ROWS=$scratch/rows
  "$python" tests/bench/table.py begin "$VENEERWB_ROWS"
  for run in "${runs[@]}"; do
    echo "--- $run ($SECONDS s)"
    # shellcheck disable=SC2086
    (one $run) || { failed=1; echo "$run failed" >&2; }
  done
  "$python" tests/bench/table.py write "$VENEERWB_ROWS"
  echo "--- README.md, docs/bench.md ($SECONDS s)"
  return "$failed"
}

if [[ ${1:-} == readme ]]; then readme; else one "$@"; fi
