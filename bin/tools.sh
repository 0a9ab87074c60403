# What ./footing and ./check need: Java of at least $min_java and, to build, its compiler and a Maven of at least
# 3.$min_maven_minor. Sourced by both. Sets java_home, java_version and mvn; all it says goes to standard error.
#
# FOOTING_JVM_DIR  where to look for Java besides JAVA_HOME and the PATH

min_java=17
min_maven_minor=8

say() { printf '%s: %s\n' "${0##*/}" "$*" >&2; }

# Sets java_version from the release file of directory $1: starting Java to ask it would cost 40 ms at every start.
read_java_version() {
    local line
    java_version=
    [[ -x $1/bin/java ]] || return 1
    if [[ -r $1/release ]]; then
        while IFS= read -r line; do
            case $line in
                JAVA_RUNTIME_VERSION=*) java_version=${line#*=}; break ;;
                JAVA_VERSION=*) java_version=${line#*=} ;;
            esac
        done <"$1/release"
    fi
    [[ -n $java_version ]] || java_version=$("$1/bin/java" -XshowSettings:properties -version 2>&1 \
        | sed -n 's/^ *java.runtime.version = //p')
    java_version=${java_version//\"/}
    java_version=${java_version//[^A-Za-z0-9.+-]/-}
    [[ ${java_version%%[!0-9]*} -ge $min_java ]]
}

# Sets java_home: JAVA_HOME, the PATH's, or one where Debian puts them; with "jdk" only one that can compile.
find_java() {
    local on_path= candidate
    if on_path=$(command -v java); then
        on_path=$(readlink -f "$on_path")
        on_path=${on_path%/bin/java}
    fi
    for candidate in "${JAVA_HOME:-}" "$on_path" "${FOOTING_JVM_DIR:-/usr/lib/jvm}"/*; do
        if [[ -n $candidate ]] && read_java_version "$candidate" && [[ ${1:-} != jdk || -x $candidate/bin/javac ]]; then
            java_home=$candidate
            return 0
        fi
    done
    return 1
}

find_maven() {
    local version
    mvn=$(command -v mvn) || return 1
    version=$(JAVA_HOME=$java_home "$mvn" -v 2>/dev/null | sed -n 's/.*Apache Maven \([0-9.]*\).*/\1/p')
    case $version in
        3.*) version=${version#3.}; [[ ${version%%.*} -ge $min_maven_minor ]] ;;
        [4-9].*) ;;
        *) return 1 ;;
    esac
}

can_install() { [[ $(id -u) -eq 0 ]] && command -v apt-get >/dev/null; }

apt() { DEBIAN_FRONTEND=noninteractive apt-get -qq "$@" </dev/null >&2; }

# Debian 13 and later have no Java 17, but a newer one by the second name.
install_java() {
    apt install -y --no-install-recommends openjdk-17-jdk-headless \
        || apt install -y --no-install-recommends default-jdk-headless
}

install_maven() { apt install -y --no-install-recommends maven; }

# Gets $1 by calling $2 where that is possible and says how to get it where not. $3: Debian's packages.
get() {
    if ! can_install; then
        say "$1 is needed and was not found. On Debian or Ubuntu, as root: apt-get install $3"
        exit 1
    fi
    say "$1 is needed and was not found; installing it (apt-get install $3) ..."
    if ! { apt update && "$2"; }; then
        say "The installation failed: see above. Please install $1 by hand, then start again."
        exit 1
    fi
}

need_java() {
    find_java && return
    get "Java $min_java or newer" install_java 'openjdk-17-jdk-headless maven'
    find_java || { say "Java was installed but not found; please set JAVA_HOME to a Java $min_java or newer."; exit 1; }
}

need_build_tools() {
    if ! find_java jdk; then
        get "The Java compiler (JDK) $min_java or newer" install_java 'openjdk-17-jdk-headless maven'
        find_java jdk || { say "The JDK was installed but not found; please set JAVA_HOME to it."; exit 1; }
    fi
    if ! find_maven; then
        get "Maven 3.$min_maven_minor or newer" install_maven maven
        find_maven || { say "This Maven is too old: $mvn. See https://maven.apache.org/install.html"; exit 1; }
    fi
    export JAVA_HOME=$java_home
}
