# SPDX-License-Identifier: Apache-2.0
# shellcheck shell=bash
# Sourced by ./check: finds the browser that pages are tested in, its driver, and the Python that a documented script
# is run with. As root on a machine with apt-get it installs those that are missing; anywhere else it says how.

first_of() {
    local name
    for name in "$@"; do
        command -v "$name" && return
    done
    return 0
}

look_for_browser() {
    ISOHUME_BROWSER=${ISOHUME_BROWSER:-$(first_of chromium chromium-browser google-chrome google-chrome-stable)}
    ISOHUME_BROWSER_DRIVER=${ISOHUME_BROWSER_DRIVER:-$(first_of chromedriver)}
    missing=()
    [ -n "$ISOHUME_BROWSER" ] || missing+=(chromium)
    [ -n "$ISOHUME_BROWSER_DRIVER" ] || missing+=(chromium-driver)
    command -v python3 >/dev/null || missing+=(python3)
}

find_browser() {
    local missing
    look_for_browser
    if [ ${#missing[@]} -gt 0 ] && [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null; then
        say "check: installing ${missing[*]}, which the tests need…"
        {
            apt-get -q update && DEBIAN_FRONTEND=noninteractive apt-get -q -y --no-install-recommends install "${missing[@]}"
        } >build/install.log 2>&1 </dev/null || tail -n 20 build/install.log >&2
        look_for_browser
    fi
    if [ ${#missing[@]} -gt 0 ]; then
        say "check: the tests need ${missing[*]} (these are Debian's names), found neither on PATH nor in ISOHUME_BROWSER"
        say "and ISOHUME_BROWSER_DRIVER. Install them, for instance: apt-get install ${missing[*]}"
        return 1
    fi
    export ISOHUME_BROWSER ISOHUME_BROWSER_DRIVER
}
