# SPDX-License-Identifier: Apache-2.0
# shellcheck shell=bash
# Sourced by ./isohume and ./check: finds a JDK and Maven, and takes turns at building. Installs nothing.
# Works with the bash 3.2 of macOS.

ISOHUME_NEEDS_JAVA=21
ISOHUME_TESTED_JAVA=25

say() { printf '%s\n' "$*" >&2; }

# The major version of the JDK in a folder, or nothing if there is none.
jdk_version() {
    [ -x "$1/bin/javac" ] && [ -x "$1/bin/java" ] || return 0
    local version=''
    if [ -r "$1/release" ]; then
        version=$(sed -n 's/^JAVA_VERSION="\([0-9]*\).*/\1/p' "$1/release")
    fi
    if [ -z "$version" ]; then
        version=$("$1/bin/javac" -version 2>&1 | sed -n 's/^javac \([0-9]*\).*/\1/p')
    fi
    printf '%s' "$version"
}

# The folder of the javac that PATH would start, links followed.
jdk_on_path() {
    local javac target
    javac=$(command -v javac) || return 0
    while [ -L "$javac" ]; do
        target=$(readlink "$javac")
        case $target in
            /*) javac=$target ;;
            *) javac=$(dirname "$javac")/$target ;;
        esac
    done
    (cd "$(dirname "$javac")/.." && pwd -P)
}

# Folders where JDKs usually are, one a line.
usual_jdks() {
    local folder
    for folder in /usr/lib/jvm/* /usr/java/* /opt/java/* /opt/jdk* "$HOME"/.sdkman/candidates/java/* "$HOME"/.jdks/* \
        /Library/Java/JavaVirtualMachines/*/Contents/Home "$HOME"/Library/Java/JavaVirtualMachines/*/Contents/Home \
        /opt/homebrew/opt/openjdk*/libexec/openjdk.jdk/Contents/Home; do
        [ -d "$folder" ] && printf '%s\n' "$folder"
    done
    [ -x /usr/libexec/java_home ] && /usr/libexec/java_home -v "$ISOHUME_NEEDS_JAVA+" 2>/dev/null
    return 0
}

# Among the usual folders, the version nearest to the one Isohume is tested on.
nearest_usual_jdk() {
    local folder version distance best='' least=''
    while IFS= read -r folder; do
        version=$(jdk_version "$folder")
        [ -n "$version" ] && [ "$version" -ge "$ISOHUME_NEEDS_JAVA" ] || continue
        distance=$((version > ISOHUME_TESTED_JAVA ? version - ISOHUME_TESTED_JAVA : ISOHUME_TESTED_JAVA - version))
        if [ -z "$least" ] || [ "$distance" -lt "$least" ]; then
            best=$folder least=$distance
        fi
    done <<<"$(usual_jdks)"
    printf '%s' "$best"
}

# Sets and exports JAVA_HOME and sets JAVA_MAJOR; says what is missing and fails otherwise.
find_java() {
    local folder version
    if [ -n "${ISOHUME_JAVA_HOME-}" ]; then
        version=$(jdk_version "$ISOHUME_JAVA_HOME")
        if [ -z "$version" ] || [ "$version" -lt "$ISOHUME_NEEDS_JAVA" ]; then
            say "ISOHUME_JAVA_HOME is $ISOHUME_JAVA_HOME: ${version:+that is a JDK $version, and }Isohume needs a JDK from $ISOHUME_NEEDS_JAVA on there."
            return 1
        fi
        JAVA_HOME=$ISOHUME_JAVA_HOME
    else
        for folder in "${JAVA_HOME-}" "$(jdk_on_path)" "$(nearest_usual_jdk)"; do
            version=''
            [ -n "$folder" ] && version=$(jdk_version "$folder")
            [ -n "$version" ] && [ "$version" -ge "$ISOHUME_NEEDS_JAVA" ] && break
            version=''
        done
        if [ -z "$version" ]; then
            say "Isohume needs a JDK, version $ISOHUME_NEEDS_JAVA or newer (tested on $ISOHUME_TESTED_JAVA), and found none that new in"
            say "ISOHUME_JAVA_HOME, JAVA_HOME, PATH or the usual folders."
            say "Install one, for instance: Debian, Ubuntu  apt-get install openjdk-21-jdk-headless"
            say "                           Fedora          dnf install java-21-openjdk-devel"
            say "                           macOS           brew install openjdk@21"
            say "or unpack one anywhere and set ISOHUME_JAVA_HOME to its folder."
            return 1
        fi
        JAVA_HOME=$folder
    fi
    JAVA_MAJOR=$version
    export JAVA_HOME
}

# Checks that PATH has a Maven that is new enough, and keeps it from warning about its own insides.
find_maven() {
    local version rest major minor patch
    if ! command -v mvn >/dev/null; then
        say "Isohume has to be built, and that needs Maven 3.8.6 or newer as \`mvn\` on PATH; there is none."
        say "Install it, for instance: apt-get install maven, dnf install maven, brew install maven."
        return 1
    fi
    if [ "$JAVA_MAJOR" -ge 24 ]; then
        export MAVEN_OPTS="${MAVEN_OPTS:+$MAVEN_OPTS }--sun-misc-unsafe-memory-access=allow --enable-native-access=ALL-UNNAMED"
    fi
    version=$(cd / && mvn --version 2>/dev/null | sed -n 's/.*Apache Maven \([0-9][0-9.]*\).*/\1/p')
    IFS=. read -r major minor patch rest <<<"$version"
    if [ $((${major:-0} * 1000000 + ${minor:-0} * 1000 + ${patch:-0})) -lt 3008006 ]; then
        say "Isohume has to be built, and that needs Maven 3.8.6 or newer; \`mvn\` on PATH is ${version:-of no version that it tells}."
        return 1
    fi
}

# Waits until nobody else builds in this tree, then keeps others waiting until this process ends or build_turn_over.
take_build_turn() {
    local root=$1
    if command -v flock >/dev/null; then
        exec 9>"$root/build/.lock" || return 1
        flock -n 9 || {
            say "another build of this tree is going on; waiting for it…"
            flock 9
        }
        return
    fi
    local told=''
    until mkdir "$root/build/.lock.d" 2>/dev/null; do
        if [ ! -w "$root/build" ]; then
            say "cannot write in $root/build"
            return 1
        fi
        [ -n "$told" ] || say "another build of this tree is going on; waiting for it… (if there is none: rmdir $root/build/.lock.d)"
        told=yes
        sleep 1
    done
    ISOHUME_LOCK=$root/build/.lock.d
    trap 'rmdir "$ISOHUME_LOCK" 2>/dev/null' EXIT
}

build_turn_over() {
    if [ -n "${ISOHUME_LOCK-}" ]; then
        rmdir "$ISOHUME_LOCK"
        trap - EXIT
    else
        exec 9>&-
    fi
}
