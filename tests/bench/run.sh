#!/usr/bin/env bash
# SPDX-License-Identifier: LGPL-2.1-or-later
# Prints how fast the main job is, as ratios against peers timed in the same run, on one thread.
#   bash tests/bench/run.sh
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/../../resources/setup.sh"
set_up
private_home
cd "$root"
export OMP_NUM_THREADS=1
in_host "$root/tests/bench/bench.py"
