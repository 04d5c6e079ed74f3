#!/usr/bin/env bash
# Publishes the program as one native file, warnings as errors, and holds its outputs against those of the managed program.
set -euo pipefail
cd "$(dirname "$0")/.."
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
dotnet publish src/BracketGen.Cli -c Release -r linux-x64 -warnaserror -o "$work/bin" >"$work/log" || { cat "$work/log"; exit 1; }
if grep -E 'warning (IL|TRIM|CS|NETSDK)' "$work/log"; then exit 1; fi
dotnet build src/BracketGen.Cli -c Release >"$work/log" || { cat "$work/log"; exit 1; }
for job in profiles/jobs/*.toml; do
  "$work/bin/bracketgen" make "$job" --into "$work/native" >/dev/null || (($? == 1))
  dotnet src/BracketGen.Cli/bin/Release/net10.0/bracketgen.dll make "$job" --into "$work/managed" >/dev/null || (($? == 1))
done
diff -r "$work/native" "$work/managed"
echo "native program: one file of $(stat -c %s "$work/bin/bracketgen") bytes, same outputs as the managed one"
