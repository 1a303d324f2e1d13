# SPDX-License-Identifier: Apache-2.0
# shellcheck shell=bash
# Sourced by ./check: finds socat, which makes the pseudo-terminals that serial drivers are tested on. As root on a
# machine with apt-get it is installed if it is missing; anywhere else it says how.

find_terminals() {
    command -v socat >/dev/null && return
    if [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null; then
        say "check: installing socat, which the tests of serial lines need…"
        {
            apt-get -q update && DEBIAN_FRONTEND=noninteractive apt-get -q -y --no-install-recommends install socat
        } >build/install.log 2>&1 </dev/null || tail -n 20 build/install.log >&2
        command -v socat >/dev/null && return
    fi
    say "check: the tests of serial lines need socat, which is not on PATH. Install it, for instance: apt-get install socat"
    return 1
}
