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
    "${program[@]}" line profiles/families/estuary.toml --at-once 1 --skip-strength --into output --register "line.register.jsonl" >line.screen 2>&1 || code=$?
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

# Without a TLS library (broken ones come first where the loader looks) everything works but the phone's side, which says what to do.
(
  mkdir "$folder/broken" "$folder/without"
  for version in 3 1.1 1.0.2 1.0.0 10; do echo broken >"$folder/broken/libssl.so.$version"; done
  export LD_LIBRARY_PATH="$folder/broken"
  cd "$folder/without"
  ln -s "$OLDPWD/profiles" profiles
  "$folder/program/bracketgen" make profiles/jobs/plover-alder-58.toml --into output >screen 2>&1 || [[ $? == 5 || $? == 1 ]] || exit 1
  diff -r output/plover-alder-58 ../native/output/plover-alder-58 || exit 1
  code=0
  "$folder/program/bracketgen" page --phone --folder profiles >phone.screen 2>&1 || code=$?
  [[ $code == 2 ]] || exit 1
  grep -q 'OpenSSL' phone.screen || exit 1
  : >page.screen
  "$folder/program/bracketgen" page --folder profiles >page.screen 2>&1 &
  served=$!
  trap 'kill $served 2>/dev/null || true' EXIT
  for _ in $(seq 100); do grep -q 'Ctrl-C' page.screen && break; sleep 0.1; done
  env -u LD_LIBRARY_PATH curl -sS --fail "$(grep -oE 'http://127\.0\.0\.1:[0-9]+/' page.screen)" | grep '<title>BracketGen</title>' >/dev/null || exit 1
  if grep -q libssl "/proc/$served/maps"; then exit 1; fi
  kill -TERM $served
  wait $served
) || { echo "native: something needs a TLS library" >&2; cat "$folder"/without/*screen >&2; status=1; }

# The phone's side: TLS, and before it is paired nothing but the page that pairs. A machine without a private address passes it over.
(
  cd "$folder/native"
  : >"$folder/phone.screen"
  "$folder/program/bracketgen" page --phone --folder profiles --address "${BRACKETGEN_ADDRESS:-$(hostname -I | tr ' ' '\n' | grep -E '^(10\.|192\.168\.|172\.(1[6-9]|2[0-9]|3[01])\.|f[cd])' | head -1)}" >"$folder/phone.screen" 2>&1 </dev/null &
  served=$!
  trap 'kill $served 2>/dev/null || true' EXIT
  for _ in $(seq 100); do grep -qE 'at once|bracketgen:' "$folder/phone.screen" && break; sleep 0.1; done
  if grep -qE 'bracketgen: (--phone needs an address|--address is)' "$folder/phone.screen"; then echo "native: no private address, the phone's side was not tried"; exit 0; fi
  whole=$(grep -oE 'https://[^ ]+#pair=[A-Za-z0-9_-]+' "$folder/phone.screen")
  address=${whole%%#*}
  code=${whole##*=}
  origin=${address%/}
  curl -gsSk --fail "$address" | grep 'Pair this phone' >/dev/null || exit 1
  [[ $(curl -gsk -o /dev/null -w '%{http_code}' "${address}shelf") == 403 ]] || exit 1
  curl -gsSk --fail -c "$folder/cookies" -H "origin: $origin" -H 'content-type: application/json' --data "{\"code\":\"$code\"}" "${address}pair" >/dev/null || exit 1
  curl -gsSk --fail -b "$folder/cookies" "${address}shelf" | grep 'plover-alder-58' >/dev/null || exit 1
  kill -TERM $served
  wait $served
) || { echo "native: the phone is not served as it should be" >&2; cat "$folder/phone.screen" >&2; status=1; }

count=$(find "$folder/native" -type f | wc -l)
jobs=$(ls profiles/jobs/*.toml | wc -l)
if ((count < 4 * jobs)); then
  echo "native: only $count files of $jobs jobs" >&2
  status=1
fi

diff -r "$folder/native" "$folder/managed" || status=1
((status == 0)) && echo "native: one file of $(stat -c %s "$folder/program/bracketgen") bytes; $count outputs, all the same as the managed program's"
exit "$status"
