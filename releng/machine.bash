# What releng/studio and releng/verify both need to know about the machine. To be sourced by bash, not run.

say() {
    printf 'pollex: %s\n' "$*" >&2
}

# Runs a command as root when this user may become root without being asked for a password.
as_root() {
    if [ "$(id -u)" = 0 ]; then
        "$@"
    elif command -v sudo >/dev/null 2>&1 && sudo -n true 2>/dev/null; then
        sudo -n "$@"
    else
        return 1
    fi
}

# Installs Debian packages where that is possible; otherwise fails and leaves it to the caller to say what is missing.
apt_install() {
    command -v apt-get >/dev/null 2>&1 || return 1
    as_root true || return 1
    say "installing $*"
    as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "$@" >/dev/null 2>&1 && return 0
    as_root apt-get update -qq >/dev/null 2>&1 || true
    as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "$@" >/dev/null
}

# Sets JAVA to a Java of 17 or newer. With the argument "jdk" it must have a compiler too.
find_java() {
    local tool=java java=
    [ "${1:-}" = jdk ] && tool=javac
    if [ -n "${JAVA_HOME:-}" ] && [ -x "$JAVA_HOME/bin/$tool" ]; then
        java=$JAVA_HOME/bin/java
    elif command -v "$tool" >/dev/null 2>&1; then
        java=$(dirname "$(readlink -f "$(command -v "$tool")")")/java
    elif apt_install openjdk-17-jdk-headless; then
        java=$(command -v java)
    else
        say "no Java found; install a JDK of version 17 or newer (Debian: apt-get install openjdk-17-jdk-headless)"
        return 1
    fi
    local version
    version=$("$java" -version 2>&1 | sed -n 's/.*version "\([0-9]*\).*/\1/p' | head -n 1)
    if [ "${version:-0}" -lt 17 ]; then
        say "$java is version ${version:-unknown}; install a JDK of 17 or newer, or set JAVA_HOME to one"
        return 1
    fi
    JAVA=$java
}

# A locale without UTF-8 would garble file names with letters outside ASCII.
use_utf8() {
    case "$(locale charmap 2>/dev/null)" in
        UTF-8) ;;
        *) export LC_ALL=C.UTF-8 ;;
    esac
}
