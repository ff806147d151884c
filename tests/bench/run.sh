#!/usr/bin/env bash
# SPDX-License-Identifier: LGPL-2.1-or-later
# Prints how fast the main job is, as ratios against peers timed in the same run, on one thread; or how far it
# can be trusted:
#   bash tests/bench/run.sh                        recompute, picture
#   bash tests/bench/run.sh registers [FIGURE...]  registers against the truth and OpenCV (minutes a figure)
#   bash tests/bench/run.sh proof [...]            faults named, clean bundles accused (an hour in full)
#   bash tests/bench/run.sh search                 the search for spots: times, the plain way, truth, force (minutes)
#   bash tests/bench/run.sh suggestions            knots and splits suggested
#   bash tests/bench/run.sh sides [FIGURE...]      backs tied, sense proved, wander measured (minutes a figure)
#   bash tests/bench/run.sh open [window]          opening a document of 48 leaves of 3 megapixels
#   bash tests/bench/run.sh drag                   dragging the wedge of a match in its panel, in a window
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/../../resources/setup.sh"
set_up
private_home
cd "$root"
export OMP_NUM_THREADS=1
if [ $# -eq 0 ]; then
    in_host "$root/tests/bench/bench.py"
elif [ "$1" = drag ]; then
    export VENEERWB_SCREEN=1920x1200 VENEERWB_REPORT=$scratch/report
    in_window "$root/tests/bench/drag.py"
    cat "$VENEERWB_REPORT"
elif [ "$1" = open ]; then
    export VENEERWB_REPORT=$scratch/report
    if [ "${2:-}" = window ]; then in_window "$root/tests/bench/open.py"; else in_host "$root/tests/bench/open.py" >"$scratch/told"; fi
    cat "$VENEERWB_REPORT"
else
    export PYTHONPATH="$site:$root"
    exec "$python" "$root/tests/bench/$1.py" "${@:2}"
fi
