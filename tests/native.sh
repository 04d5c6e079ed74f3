#!/usr/bin/env bash
# Publishes the native program, and proves that it is one file, that neither compiler nor trimmer has anything to say, and that it
# makes the same bytes as the managed program from every job that ships with it. Ends with an exit code other than 0 where not.
set -euo pipefail
cd "$(dirname "$0")/.."
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1

folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
mkdir "$folder/native" "$folder/managed"

# A warning of the native compiler or the trimmer ends the build (TreatWarningsAsErrors); the log is searched too, because a summary
# such as IL2104 or IL3053 says only that a whole library was quiet about its own.
dotnet publish src/BracketGen.Cli -c Release -r linux-x64 -o "$folder/program" -p:TrimmerSingleWarn=false 2>&1 | tee "$folder/log"
if grep -E 'warning|IL[23][0-9]{3}' "$folder/log"; then
  echo "native: the build has warnings" >&2
  exit 1
fi

if [[ $(ls -A "$folder/program") != bracketgen ]]; then
  echo "native: one file was wanted, not:" >&2
  ls -lA "$folder/program" >&2
  exit 1
fi

dotnet build src/BracketGen.Cli -c Release -v quiet
status=0
for job in profiles/jobs/*.toml; do
  name=$(basename "$job" .toml)
  for command in "make $job --into output" "travel $job"; do
    for kind in native managed; do
      program=("$folder/program/bracketgen")
      [[ $kind == managed ]] && program=(dotnet exec "$PWD/src/BracketGen.Cli/bin/Release/net10.0/bracketgen.dll")
      (
        # From its own folder, so that the paths on the screen are the same.
        root=$PWD
        cd "$folder/$kind"
        ln -sfn "$root/profiles" profiles
        code=0
        # shellcheck disable=SC2086
        "${program[@]}" $command >"$name-${command%% *}.screen" 2>&1 || code=$?
        echo "exit code $code" >>"$name-${command%% *}.screen"
      )
    done
  done
done

# The product line too, one combination at a time so that the lines on the screen come in the same order.
for kind in native managed; do
  program=("$folder/program/bracketgen")
  [[ $kind == managed ]] && program=(dotnet exec "$PWD/src/BracketGen.Cli/bin/Release/net10.0/bracketgen.dll")
  (
    cd "$folder/$kind"
    code=0
    "${program[@]}" line profiles/families/estuary.toml --at-once 1 --skip-strength --into output >line.screen 2>&1 || code=$?
    echo "exit code $code" >>line.screen
  )
done

# Each step ends the subshell by itself: within «||» bash does not mind a failure.
# The page: the native program serves it, finds the job's bracket, and hands out the same cut file that the command writes.
(
  cd "$folder/native"
  "$folder/program/bracketgen" page --folder profiles >"$folder/page.screen" 2>&1 &
  served=$!
  trap 'kill $served 2>/dev/null || true' EXIT
  for _ in $(seq 100); do grep -q 'Ctrl-C' "$folder/page.screen" && break; sleep 0.1; done
  address=$(grep -oE 'http://127\.0\.0\.1:[0-9]+/' "$folder/page.screen")
  ask() { curl -sS --fail-with-body -H 'content-type: application/json' --data "$2" "$address$1"; }
  curl -sS --fail "$address" | grep '<title>BracketGen</title>' >/dev/null || exit 1
  curl -sS --fail "${address}report.js" | grep 'export {' >/dev/null || exit 1
  desk=$(ask open '{"path":"jobs/plover-alder-58.toml"}') || exit 1
  ask work "$desk" | grep '"word":"Not proven"' >/dev/null || exit 1
  ask output "{\"name\":\"flat-pattern.dxf\",${desk#\{}" | cmp - output/plover-alder-58/flat-pattern.dxf || exit 1
  [[ $(curl -s -o /dev/null -w '%{http_code}' -H 'Host: bench.invalid' "$address") == 403 ]] || exit 1
  kill -TERM $served
  wait $served
) || { echo "native: the page is not served as it should be" >&2; cat "$folder/page.screen" >&2; status=1; }

count=$(find "$folder/native" -type f | wc -l)
jobs=$(ls profiles/jobs/*.toml | wc -l)
if ((count < 4 * jobs)); then
  echo "native: only $count files of $jobs jobs" >&2
  status=1
fi

diff -r "$folder/native" "$folder/managed" || status=1
((status == 0)) && echo "native: one file of $(stat -c %s "$folder/program/bracketgen") bytes; $count outputs, all the same as the managed program's"
exit "$status"
