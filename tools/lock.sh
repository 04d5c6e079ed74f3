#!/usr/bin/env bash
# Writes the lock files anew, those of the managed program and those of the native one. Run it after a package, a project reference or the SDK has changed, and commit what it writes.
set -euo pipefail
cd "$(dirname "$0")/.."
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 CI=false
dotnet restore BracketGen.sln --force-evaluate
dotnet msbuild src/BracketGen.Cli -nologo -t:Restore -p:RuntimeIdentifier=linux-x64 -p:_IsPublishing=true -p:RestoreForceEvaluate=true
