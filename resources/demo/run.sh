#!/usr/bin/env bash
# SPDX-License-Identifier: LGPL-2.1-or-later
# Lays up the demonstration top inside FreeCAD, without a window, and writes what it makes to out/.
#   bash resources/demo/run.sh
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/../setup.sh"
set_up
private_home
cd "$root"
mkdir -p out
in_host "$root/resources/demo/demo.py"
