# What both ./footing and ./check need: a JDK of at least $min_java and, to build, a Maven of at least 3.$min_maven_minor.
# Sourced by them. Sets java_home, java_version and mvn. Everything it says goes to standard error.

min_java=17
min_maven_minor=8

say() { printf '%s: %s\n' "${0##*/}" "$*" >&2; }

# Reads java_version of the JDK or JRE in directory $1 without starting it, which would cost 40 ms at each start.
read_java_version() {
    local line
    java_version=
    [[ -x $1/bin/java ]] || return 1
    if [[ -r $1/release ]]; then
        while IFS= read -r line; do
            case $line in
                JAVA_RUNTIME_VERSION=*) line=${line#*=}; java_version=${line//\"/}; break ;;
                JAVA_VERSION=*) line=${line#*=}; java_version=${line//\"/} ;;
            esac
        done <"$1/release"
    fi
    if [[ -z $java_version ]]; then
        java_version=$("$1/bin/java" -XshowSettings:properties -version 2>&1 | sed -n 's/^ *java.runtime.version = //p')
    fi
    java_version=${java_version//[^A-Za-z0-9.+_-]/_}
    [[ ${java_version%%[!0-9]*} -ge $min_java ]] 2>/dev/null
}

# Looks for Java in JAVA_HOME, on the PATH and where Debian puts it; with "jdk" only one that can compile will do.
find_java() {
    local on_path candidate
    on_path=$(command -v java) && on_path=$(readlink -f "$on_path") && on_path=${on_path%/bin/java}
    for candidate in "${JAVA_HOME:-}" "$on_path" "${FOOTING_JVM_DIR:-/usr/lib/jvm}"/*; do
        [[ -n $candidate ]] && read_java_version "$candidate" || continue
        [[ ${1:-} != jdk || -x $candidate/bin/javac ]] || continue
        java_home=$candidate
        return 0
    done
    return 1
}

find_maven() {
    local version
    mvn=$(command -v mvn) || return 1
    version=$(JAVA_HOME=$java_home "$mvn" -v 2>/dev/null | sed -n 's/.*Apache Maven \([0-9.]*\).*/\1/p')
    [[ $version == [4-9].* || $version == 3.* && $(cut -d. -f2 <<<"$version") -ge $min_maven_minor ]]
}

can_install() { [[ ${EUID:-$(id -u)} -eq 0 && -e /etc/debian_version ]] && command -v apt-get >/dev/null; }

# Installs Debian packages, or stops with a word on what is missing and how to get it.
install_or_stop() {
    local missing=$1
    shift
    if ! can_install; then
        say "$missing is needed and was not found."
        say "  On Debian or Ubuntu, as root: apt-get install $*"
        exit 1
    fi
    say "$missing is needed and was not found; installing it: apt-get install $*"
    export DEBIAN_FRONTEND=noninteractive
    if ! { apt-get -qq update && apt-get -qq -y --no-install-recommends install "$@"; } >&2 </dev/null; then
        say "The installation failed. Please install $missing by hand and try again."
        exit 1
    fi
}

jdk_package() {
    if ! can_install || apt-cache policy openjdk-17-jdk-headless 2>/dev/null | grep -q 'Candidate: [0-9]'; then
        echo openjdk-17-jdk-headless
    else
        echo default-jdk-headless
    fi
}

need_java() {
    find_java && return
    install_or_stop "Java $min_java or newer" "$(jdk_package)"
    find_java || { say "Java $min_java was installed but can not be found; please set JAVA_HOME."; exit 1; }
}

need_build_tools() {
    if ! find_java jdk; then
        install_or_stop "A Java development kit (JDK) of version $min_java or newer" "$(jdk_package)" maven
        find_java jdk || { say "The JDK was installed but can not be found; please set JAVA_HOME."; exit 1; }
    fi
    if ! find_maven; then
        install_or_stop "Maven 3.$min_maven_minor or newer" maven
        find_maven || { say "The Maven found is older than 3.$min_maven_minor: ${mvn:-none on the PATH}"; exit 1; }
    fi
    export JAVA_HOME=$java_home
}
