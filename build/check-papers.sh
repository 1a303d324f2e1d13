#!/usr/bin/env bash
# SPDX-License-Identifier: Apache-2.0
# What no compiler sees: links between documents, licence lines, comments on public types, sizes, the one 273.15.
set -uo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.." || exit 1

wrong=0
report() {
    printf '%s\n' "$*"
    wrong=$((wrong + 1))
}

files() { find . \( -name target -o -name .git -o -name node_modules \) -prune -o -type f -name "$1" -print; }

# A link of a document to a file: the file must be there. Code in back ticks or between fences is no link.
links() {
    local document target
    while IFS= read -r document; do
        while IFS= read -r target; do
            target=${target%%#*}
            [ -z "$target" ] || [ -e "$(dirname "$document")/$target" ] || report "$document: no file $target"
        done < <(awk '/^ *```/ {code = !code; next} !code {gsub(/`[^`]*`/, ""); print}' "$document" \
            | grep -oE '\]\([^) ]+\)' | sed -e 's/^](//' -e 's/)$//' | grep -vE '^(https?|mailto):|^#')
    done < <(files '*.md')
}

licence_lines() {
    local file
    while IFS= read -r file; do
        [ "$(head -n 1 "$file")" = '// SPDX-License-Identifier: Apache-2.0' ] || report "$file: no licence line"
    done < <(files '*.java')
    for file in isohume check .ci/run build/*.sh; do
        head -n 2 "$file" | grep -q '^# SPDX-License-Identifier: Apache-2.0$' || report "$file: no licence line"
    done
}

# Every public type of the program says what it is.
comments() {
    local file
    while IFS= read -r file; do
        awk '/^\/\*\*/ {said = 1} /^public / {exit !said}' "$file" || report "$file: a public type without a comment"
    done < <(files '*.java' | grep /src/main/ | xargs grep -lE '^public ')
}

sizes() {
    local lines file
    while read -r lines file; do
        [ "$lines" -le 400 ] || report "$file: $lines lines, more than 400"
    done < <(files '*.java' | xargs wc -l | grep -v ' total$')
}

# Temperature is the only class that turns degrees Celsius into kelvin.
ice_point() {
    local places
    places=$(files '*.java' | grep /src/main/ | xargs grep -nF '273.15')
    [ "$(printf '%s\n' "$places" | wc -l)" -eq 1 ] || report "273.15 stands in more than one place:
$places"
}

links
licence_lines
comments
sizes
ice_point
[ "$wrong" -eq 0 ] && echo "links, licence lines, comments, sizes: nothing wrong"
[ "$wrong" -eq 0 ]
