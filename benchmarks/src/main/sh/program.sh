# SPDX-License-Identifier: Apache-2.0
# shellcheck shell=bash
# Sourced by the programs in benchmarks/, with root set: finds the JDK, builds what is out of date, and starts a class.

# shellcheck source=build/find-java.sh
. "$root/build/find-java.sh"

jar=$root/benchmarks/target/isohume-benchmarks-0.1.0-SNAPSHOT.jar
rooms=(quantity moistair uncertainty journal device simulator run result certificate station benchmarks)

outdated() {
    [ -f "$jar" ] || return 0
    local room sources=("$root/pom.xml")
    for room in "${rooms[@]}"; do
        sources+=("$root/$room/pom.xml" "$root/$room/src/main")
    done
    [ -n "$(find "${sources[@]}" -newer "$jar" | head -n 1)" ]
}

build() (
    cd "$root" || exit 1
    say "building, once…"
    begun=$(mktemp) || exit 1
    if ! mvn -q -B -ntp package -pl benchmarks -am -Dmaven.test.skip=true -Dquarkus.build.skip=true >build/build.log 2>&1; then
        tail -n 40 build/build.log >&2
        say "could not be built; above is the end of build/build.log"
        exit 1
    fi
    touch -r "$begun" "$jar" # what was changed meanwhile is newer
    rm -f "$begun"
)

# The class to start, then its arguments; properties for the virtual machine come in the array `properties`.
start() {
    local class=$1
    shift
    find_java || exit 1
    if outdated; then
        find_maven || exit 1
        take_build_turn "$root" || exit 1
        if outdated; then
            build || exit 1
        fi
        build_turn_over
    fi
    if [ "$JAVA_MAJOR" -ge 23 ]; then
        properties+=(--sun-misc-unsafe-memory-access=allow) # JMH uses it
    fi
    exec "$JAVA_HOME/bin/java" ${properties[@]+"${properties[@]}"} \
        -cp "$jar:$root/benchmarks/target/lib/*" "$class" "$@"
}
