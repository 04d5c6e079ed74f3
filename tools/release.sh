#!/usr/bin/env bash
# Makes the release for linux-x64: one native program with schemas, examples, shell completions, documentation, licence texts and licence list.
#
#   tools/release.sh [FOLDER]     into FOLDER (output/release unless told)
#   tools/release.sh --check      twice, from copies in two different folders; ends with an exit code other than 0 unless all bytes are the same
#
# The same sources, SDK and linker give the same bytes, wherever and whenever it is run: paths are mapped away, every date is that of
# SOURCE_DATE_EPOCH (1 January 2026 unless set), and names are sorted.
set -euo pipefail
cd "$(dirname "$0")/.."
root=$PWD
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 LC_ALL=C TZ=UTC SOURCE_DATE_EPOCH=${SOURCE_DATE_EPOCH:-1767225600}

if [[ ${1:-} == --check ]]; then
  work=$(mktemp -d)
  trap 'rm -rf "$work"' EXIT
  git ls-files -z --cached --others --exclude-standard | tar --null --files-from=- --create >"$work/sources.tar"
  for copy in one "another place/two"; do
    mkdir -p "$work/$copy"
    tar --extract --directory="$work/$copy" <"$work/sources.tar"
    "$work/$copy/tools/release.sh" "$work/$copy.out" >"$work/log" 2>&1 || { cat "$work/log" >&2; exit 1; }
  done
  if diff -r "$work/one.out" "$work/another place/two.out"; then
    echo "release: $(find "$work/one.out" -type f | wc -l) files, the same bytes from two folders"
    exit 0
  fi
  exit 1
fi

out=$(realpath -m "${1:-output/release}")
version=$(sed -n 's:.*<Version>\(.*\)</Version>.*:\1:p' Directory.Build.props)
name=bracketgen-$version-linux-x64
rm -rf "${out:?}/$name" "$out/$name".*
mkdir -p "$out/$name"

dotnet publish src/BracketGen.Cli -c Release -r linux-x64 -o "$out/$name" -p:ContinuousIntegrationBuild=true -p:DebugType=none
[[ $(ls -A "$out/$name") == bracketgen ]] || { echo "release: one file was wanted from publish, not: $(ls -A "$out/$name")" >&2; exit 1; }
"$out/$name/bracketgen" --version | grep -qx "$version" || { echo "release: the program does not say that it is $version" >&2; exit 1; }

cp -r profiles "$out/$name/profiles"
mkdir -p "$out/$name/docs" "$out/$name/completions" "$out/$name/licences"
cp README.md LICENSE "$out/$name/"
cp -r docs/*.md docs/*.json docs/pictures "$out/$name/docs/"
cp licences/* src/BracketGen.Drawing/Fonts/*.txt "$out/$name/licences/"
"$out/$name/bracketgen" completions bash >"$out/$name/completions/bracketgen.bash"
"$out/$name/bracketgen" completions zsh >"$out/$name/completions/_bracketgen"
"$out/$name/bracketgen" completions fish >"$out/$name/completions/bracketgen.fish"

# What is in the program, with licences; its only date is the moment of writing.
dotnet tool restore >/dev/null
dotnet tool run dotnet-CycloneDX src/BracketGen.Cli/BracketGen.Cli.csproj --output "$out/$name/licences" --filename bracketgen.cdx.json --output-format Json \
  --runtime linux-x64 --no-serial-number --disable-package-restore --set-name bracketgen --set-version "$version" >/dev/null
sed -i "s/\"timestamp\": \"[^\"]*\"/\"timestamp\": \"$(date -u -d "@$SOURCE_DATE_EPOCH" +%Y-%m-%dT%H:%M:%SZ)\"/" "$out/$name/licences/bracketgen.cdx.json"

find "$out/$name" -type d -exec chmod 755 {} + -o -type f -exec chmod 644 {} +
chmod 755 "$out/$name/bracketgen"
tar --create --directory="$out" --sort=name --mtime="@$SOURCE_DATE_EPOCH" --owner=0 --group=0 --numeric-owner --format=gnu "$name" | gzip -9n >"$out/$name.tar.gz"
(cd "$out" && sha256sum "$name.tar.gz" >"$name.tar.gz.sha256")
echo "release: $out/$name.tar.gz, $(stat -c %s "$out/$name.tar.gz") bytes, SHA-256 $(cut -d' ' -f1 "$out/$name.tar.gz.sha256")"
