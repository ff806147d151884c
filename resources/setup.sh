# SPDX-License-Identifier: LGPL-2.1-or-later
# Sourced by tests/run.sh and resources/demo/run.sh: gets what they need onto a bare Debian (12 or newer), once.
#
# From Debian: FreeCAD, the numeric packages, pytest, Xvfb; apt-get runs only when one is missing.
# Into .deps/<suite>-<python>, a venv that sees Debian's packages: tools and libraries that only check our work.
# Plain Python finds them through PYTHONPATH; FreeCAD, which clears or ignores that, through VENEERWB_SITE. numpy and
# its kin stay at Debian's version, or the host's own compiled modules would no longer load. A checker that cannot be
# had is named in one line, and its tests skip.
#
# Gives: $root, $python (the host's), $deps, and the functions stop, set_up, private_home and in_host.

root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
debian_packages=(freecad freecad-python3 python3 python3-numpy python3-scipy python3-shapely python3-pil python3-ezdxf
  python3-hypothesis python3-pytest python3-pypdf python3-svgelements python3-venv python3-pip xvfb libgl1-mesa-dri
  poppler-utils)
checkers=(ruff==0.17.5 opencv-python-headless:cv2 scikit-image:skimage) # what pip calls it:what is imported

stop() { printf '%s\n' "$@" >&2; exit 1; }

installed() { dpkg-query -W -f='${db:Status-Abbrev}${Package} ${Version}\n' "${debian_packages[@]}" 2>/dev/null | sed -n 's/^ii //p' || true; }

missing_packages() {
  local have package
  have=" $(installed | cut -d ' ' -f 1 | tr '\n' ' ')"
  for package in "${debian_packages[@]}"; do [[ $have == *" $package "* ]] || printf '%s ' "$package"; done
}

codename() { (. /etc/os-release && echo "${VERSION_CODENAME:-$ID}"); }

locate() { # where this host's private folder is, and the mark that says it is up to date
  python=/usr/bin/python3
  local name; name=$(basename "$(readlink -f "$python")")
  deps=$root/.deps/$(codename)-$name
  site=$deps/lib/$name/site-packages
  stamp=$({ installed; printf '%s\n' "${checkers[@]}" data; } | sha256sum | cut -d ' ' -f 1)
}

up_to_date() { [[ -z $(missing_packages) ]] && locate && [[ $(cat "$deps/stamp" 2>/dev/null) == "$stamp" ]]; }

install_debian() {
  local missing log; missing=$(missing_packages); log=$root/.deps/apt-$(codename).log
  [[ -n $missing ]] || return 0
  echo "set-up: installing from Debian: $missing"
  export DEBIAN_FRONTEND=noninteractive
  # shellcheck disable=SC2086
  { apt-get update -q && apt-get install -y -q --no-install-recommends -o DPkg::Lock::Timeout=600 $missing; } >"$log" 2>&1 9>&- ||
    stop "$(tail -n 15 "$log")" "Set-up failed: apt-get could not install: $missing"
}

pip_quiet() { "$deps/bin/python" -m pip "$@" >>"$deps/pip.log" 2>&1; }

install_checkers() {
  local entry package module
  echo "set-up: filling ${deps#"$root"/}"
  rm -rf "$deps"
  "$python" -m venv --system-site-packages "$deps" || stop "Set-up failed: no venv could be made in $deps."
  "$python" - >"$deps/constraints.txt" <<'PY'
from importlib.metadata import PackageNotFoundError, version
for name in ("numpy", "scipy", "pillow", "shapely", "matplotlib"):
    try:
        print(f"{name}=={version(name)}")
    except PackageNotFoundError:
        pass
PY
  : >"$deps/unavailable"
  for entry in "${checkers[@]}"; do
    package=${entry%%:*}; module=${entry#"$package"}; module=${module#:}
    pip_quiet install --only-binary :all: -c "$deps/constraints.txt" "$package" || { echo "$package" >>"$deps/unavailable"; continue; }
    [[ -z $module ]] || PYTHONPATH=$site "$python" -c "import $module" >>"$deps/pip.log" 2>&1 ||
      { pip_quiet uninstall -y "$package"; echo "$package" >>"$deps/unavailable"; }
  done
  PYTHONPATH=$site "$python" -c 'import numpy, scipy, shapely, PIL' 2>>"$deps/pip.log" ||
    stop "Set-up failed: Debian's numpy, scipy, shapely or Pillow no longer loads; see $deps/pip.log."
  fetch_data
  echo "$stamp" >"$deps/stamp"
}

fetch_data() { # what Debian's scikit-image carries for its tests and PyPI's does not: taken out, not installed
  mkdir -p "$deps/data" "$deps/fetched"
  (cd "$deps/fetched" && apt-get download -q python3-skimage) >>"$deps/pip.log" 2>&1 &&
    dpkg-deb --fsys-tarfile "$deps"/fetched/python3-skimage_*.deb |
    tar -xO --wildcards '*/skimage/color/tests/ciede2000_test_data.txt' >"$deps/data/ciede2000_test_data.txt" ||
    { rm -f "$deps/data/ciede2000_test_data.txt"; echo "the table of colour pairs" >>"$deps/unavailable"; }
  rm -rf "$deps/fetched"
}

set_up() {
  command -v dpkg-query >/dev/null || stop "This set-up is for Debian 12 or newer: dpkg was not found."
  if ! up_to_date; then
    local missing; missing=$(missing_packages)
    [[ -z $missing || $(id -u) == 0 ]] || stop "Debian packages are missing. Run this once, then try again:" \
      "  sudo apt-get update && sudo apt-get install --no-install-recommends $missing"
    mkdir -p "$root/.deps" && [[ -w $root/.deps ]] || stop "Set-up failed: $root/.deps cannot be written."
    # One set-up at a time; whoever waited finds the work done. Braces and not a subshell, so that `stop` stops.
    { flock 9; up_to_date || { install_debian; locate; install_checkers; }; } 9>"$root/.deps/lock-$(codename)"
  fi
  local name
  while read -r name; do
    echo "set-up: $name cannot be had for $(basename "$(readlink -f "$python")"); what needs it is skipped (remove ${deps#"$root"/} to try again)"
  done <"$deps/unavailable"
}

leave() { # what every end comes to; the folder goes with the shell that made it
  [[ -z $screen ]] || kill "$screen" 2>/dev/null || true
  [[ $BASHPID != "$made_by" ]] || rm -rf "$scratch"
}

private_home() { # a home of its own, with the addon linked where each host looks, so that no user's settings are touched
  scratch=$(mktemp -d "${TMPDIR:-/tmp}/veneerwb.XXXXXX")
  made_by=$BASHPID screen=
  trap leave EXIT
  export XDG_RUNTIME_DIR=$scratch/run LIBGL_ALWAYS_SOFTWARE=1 QT_QPA_PLATFORM=offscreen
  # The start page of 0.20.2 is a browser, which refuses to run as root inside its sandbox.
  export QTWEBENGINE_DISABLE_SANDBOX=1 QTWEBENGINE_CHROMIUM_FLAGS=--no-sandbox
  export VENEERWB_DATA=$deps/data PYTHONPATH=$site VENEERWB_SITE=$site PYTHONDONTWRITEBYTECODE=1
  unset XDG_CONFIG_HOME XDG_DATA_HOME XDG_CACHE_HOME FREECAD_USER_HOME FREECAD_USER_DATA FREECAD_USER_TEMP WAYLAND_DISPLAY
  mkdir -m 700 "$XDG_RUNTIME_DIR"
  home_in "$scratch/home"
}

home_in() { # home_in FOLDER: makes it the home from now on; what one saves there another never reads
  export HOME=$1
  local user=$HOME/.local/share/FreeCAD mod
  for mod in "$user/Mod" "$user/v1-1/Mod"; do mkdir -p "$mod" && ln -s "$root" "$mod/VeneerLayup"; done
}

# The host runs a script that raises twice and then exits 0, reads a console from standard input afterwards, and takes no
# options on 0.20.2: so scripts go through in_host.py, which leaves with the script's own exit code.
in_host() { # in_host FILE: runs a Python file inside FreeCAD, without a window
  rm -f "$scratch/result"
  VENEERWB_RUN=$1 VENEERWB_RESULT=$scratch/result freecadcmd "$root/resources/in_host.py" </dev/null || return
  [[ -e $scratch/result ]] || { echo "FreeCAD left without running $1" >&2; return 1; }
}

start_screen() { # Xvfb takes a free number and tells it; Debian 13's xvfb-run can leave its server running behind it
  rm -f "$scratch/display" # left by the screen before
  Xvfb -displayfd 3 -screen 0 "${VENEERWB_SCREEN:-1280x900}x24" -nolisten tcp </dev/null >"$scratch/screen.log" 2>&1 3>"$scratch/display" 9>&- &
  screen=$!
  trap leave EXIT # again, because a subshell has none
  local tries
  for ((tries = 0; tries < 200; tries++)); do
    [[ ! -s $scratch/display ]] || return 0
    kill -0 "$screen" 2>/dev/null || return 1
    sleep 0.05
  done
  return 1
}

in_window() { # in_window FILE: runs a Python file inside FreeCAD's window, on a screen of its own
  rm -f "$scratch/result"
  start_screen || { echo "Xvfb did not start" >&2; return 1; }
  env -u QT_QPA_PLATFORM DISPLAY=":$(cat "$scratch/display")" VENEERWB_RUN="$1" VENEERWB_RESULT="$scratch/result" \
    timeout -k 10 300 freecad "$root/resources/in_host.py" </dev/null >"$scratch/window.out" 2>&1 || true
  kill "$screen"
  [[ $(cat "$scratch/result" 2>/dev/null) == 0 ]] ||
    { tail -n 20 "$scratch/window.out" >&2; echo "FreeCAD's window could not run $1" >&2; return 1; }
}
