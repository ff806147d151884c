#!/usr/bin/env bash
# SPDX-License-Identifier: LGPL-2.1-or-later
# Runs tests/run.sh on three hosts: FreeCAD 0.20.2, 1.0.0 and 1.1.3, which are those of Debian bookworm, trixie and
# forky. The machine's own comes first, then the others beside each other, each in a root (root.sh) and with a log in
# out/hosts. One that cannot be had is skipped, and a line says why; one that takes too long is stopped and has failed.
#   bash .ci/hosts.sh [RING [ARGS...]]   as for tests/run.sh
# VENEERWB_HOSTS    which of the three; all if not set
# VENEERWB_MINUTES  how long the own host may take, and how long the whole, building included; "14 39" if not set,
#                   39 where only the first is
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
. "$here/../resources/setup.sh"
declare -A freecad=([bookworm]=0.20.2 [trixie]=1.0.0 [forky]=1.1.3) job=()
own=$(codename) logs=$root/out/hosts summary='' said='' failed=0 ticker=''
read -ra chosen <<<"${VENEERWB_HOSTS:-bookworm trixie forky}"
read -r own_minutes all_minutes <<<"${VENEERWB_MINUTES:-14}"
all_minutes=${all_minutes:-39}
[[ "$own_minutes $all_minutes" =~ ^[1-9][0-9]*\ [1-9][0-9]*$ ]] || stop "VENEERWB_MINUTES is two numbers, as \"14 39\"."
for suite in "${chosen[@]}"; do
  [[ -n ${freecad[$suite]:-} ]] || stop "No host is called $suite: bookworm, trixie or forky."
done

start() { # start SUITE SIGNAL MINUTES COMMAND...: in the background, in a process group that ends when its time is up
  set -m
  timeout -k 20 -s "$2" "$3m" "${@:4}" </dev/null &
  job[$1]=$!
  set +m
}

interrupted() { # a root's name spaces end with what made them; tests/run.sh ends what it started
  trap '' INT TERM HUP
  for suite in "${!job[@]}"; do
    kill "-$([[ $suite == "$own" ]] && echo TERM || echo KILL)" -- "-${job[$suite]}" 2>/dev/null || true
  done
  [[ -z $ticker ]] || kill "$ticker" 2>/dev/null || true
  wait
  exit 130
}
trap interrupted INT TERM HUP

ended() { # ended SUITE MINUTES: waits for it, and notes how it went
  local suite=$1 status=0
  wait "${job[$suite]}" || status=$?
  unset "job[$suite]"
  case $status in
    0) said=passed ;;
    77) said="skipped: $(tail -n 1 "$logs/$suite.log")" ;;
    124 | 137) said="FAILED: stopped after $2 minutes" failed=1 ;;
    *) said=FAILED failed=1 ;;
  esac
  summary+="  $suite, FreeCAD ${freecad[$suite]}: $said"$'\n'
  printf '\n== %s, FreeCAD %s: %s (%s s from the start)\n' "$suite" "${freecad[$suite]}" "$said" "$SECONDS"
}

shown() { # shown SUITE: of its log the rings that failed, whole; of a host that was stopped, its last ring
  local log=$logs/$1.log ring
  sed -n '/^  [a-z]*: .* s)$/p; /^  all of it: /p' "$log"
  for ring in $(sed -n 's/^  \([a-z]*\): FAILED .*/\1/p' "$log"); do
    awk -v ring="== $ring" '/^== /{on = $0 == ring} on' "$log"
  done
  grep -q '^  all of it: ' "$log" || tail -n 40 "$log"
}

tick() { # every minute a line that says how far each is
  local suite
  while sleep 1; do
    ((SECONDS % 60 == 0)) || continue
    for suite in "${!job[@]}"; do
      ! kill -0 "${job[$suite]}" 2>/dev/null || printf '  after %s s: %s: %s\n' "$SECONDS" "$suite" \
        "$(grep -aoE '^== .*|^set-up: .*|  after .*|[0-9]+%' "$logs/$suite.log" | tail -n 2 | paste -sd ' ')"
    done
  done
}

mkdir -p "$logs"
if [[ " ${chosen[*]} " == *" $own "* ]]; then
  echo "== $own, FreeCAD ${freecad[$own]}: this machine's own"
  start "$own" TERM "$own_minutes" bash "$root/tests/run.sh" "$@"
  ended "$own" "$own_minutes"
fi
other_minutes=$((all_minutes - SECONDS / 60))
((other_minutes > 0)) || other_minutes=1 # timeout takes 0 for no limit
(($(env -u OMP_NUM_THREADS nproc) > 3)) || export VENEERWB_ONE_AT_A_TIME=1 # a core each
export OMP_NUM_THREADS=1 VENEERWB_GUI_SECONDS=${VENEERWB_GUI_SECONDS:-1500} # newer hosts are slower
for suite in "${chosen[@]}"; do
  [[ $suite != "$own" ]] || continue
  echo "== $suite, FreeCAD ${freecad[$suite]}: in a root; its log is out/hosts/$suite.log"
  start "$suite" KILL "$other_minutes" bash "$here/root.sh" "$suite" bash tests/run.sh "$@" >"$logs/$suite.log" 2>&1
done
tick &
ticker=$!
for suite in "${chosen[@]}"; do
  [[ -n ${job[$suite]:-} ]] || continue
  ended "$suite" "$other_minutes"
  [[ $said == skipped:* ]] || shown "$suite"
done
kill "$ticker"
printf '\nThe hosts:\n%s  all of it: %s s\n' "$summary" "$SECONDS"
exit "$failed"
