#!/usr/bin/env bash
# SPDX-License-Identifier: LGPL-2.1-or-later
# Lays up the demonstration top inside FreeCAD and writes what it makes to out/. Only the picture of the 3-D view
# and the drawing need a window, which opens on a screen of its own.
#   bash resources/demo/run.sh
#   bash resources/demo/run.sh gallery   all matches and tops as two sheets of pictures, and nothing else
#   bash resources/demo/run.sh pictures  the pictures of docs, from the real screens
#   bash resources/demo/run.sh example   the example that the workbench opens; only on the oldest host
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/../setup.sh"
set_up
private_home
cd "$root"
mkdir -p out
case ${1:-top} in
  top) ;;
  gallery) in_host "$root/resources/demo/gallery.py"; exit ;;
  pictures)
    in_host "$root/resources/demo/words.py"
    VENEERWB_SCREEN=1180x820 in_window "$root/resources/demo/pictures.py"
    echo "the screens: docs/pictures"
    exit
    ;;
  example) in_host "$root/resources/examples/make.py"; exit ;;
  *) stop "No demonstration is called $1: leave it out, or say gallery, pictures or example." ;;
esac
in_host "$root/resources/demo/demo.py"
in_window "$root/resources/demo/view.py"
echo "the 3-D view: out/view.png"
in_window "$root/resources/demo/drawing.py"
echo "the drawing: out/drawing.pdf"
