# shellcheck shell=bash
# Finds a JDK that can build and run Plumeline. Sourced.

needed_jdk=25

# jdk_version HOME: prints the feature version of a full JDK there, or nothing.
jdk_version() {
  local line version
  [[ -x $1/bin/java && -x $1/bin/javac && -r $1/release ]] || return 0
  while IFS= read -r line || [[ -n $line ]]; do
    case $line in
      JAVA_VERSION=*)
        version=${line#JAVA_VERSION=}
        version=${version//\"/}
        version=${version%%[.+-]*}
        case $version in '' | *[!0-9]*) ;; *) printf '%s\n' "$version" ;; esac
        ;;
    esac
  done < "$1/release"
}

# jdk_homes: prints the places where a JDK may be, one a line: the user's own choice first.
jdk_homes() {
  local on_path link
  if [[ -n ${JAVA_HOME-} ]]; then printf '%s\n' "$JAVA_HOME"; fi
  on_path=$(command -v javac 2> /dev/null) || on_path=''
  while [[ -n $on_path && -L $on_path ]]; do
    link=$(readlink "$on_path")
    if [[ $link == /* ]]; then on_path=$link; else on_path=${on_path%/*}/$link; fi
  done
  case $on_path in */bin/javac) printf '%s\n' "${on_path%/bin/javac}" ;; esac
  if [[ -x /usr/libexec/java_home ]]; then /usr/libexec/java_home -v "$needed_jdk+" 2> /dev/null || true; fi
  local place
  for place in /usr/lib/jvm/* /usr/lib64/jvm/* /usr/java/* /usr/local/java/* /opt/java/* /opt/jdk* /opt/*/ \
    /Library/Java/JavaVirtualMachines/*/Contents/Home "${HOME-}"/Library/Java/JavaVirtualMachines/*/Contents/Home \
    "${HOME-}"/.sdkman/candidates/java/* "${HOME-}"/.jdks/* "${HOME-}"/.local/share/mise/installs/java/*; do
    if [[ -d $place ]]; then printf '%s\n' "${place%/}"; fi
  done
}

# find_jdk: sets JAVA_HOME to the first fitting JDK, or says what is missing and returns 1.
find_jdk() {
  local home version seen=''
  while IFS= read -r home; do
    version=$(jdk_version "$home")
    if [[ -n $version && $version -ge $needed_jdk ]]; then
      export JAVA_HOME=$home
      return 0
    fi
    if [[ -n $version ]]; then seen="$seen $version ($home)"; fi
  done < <(jdk_homes)
  {
    printf 'plumeline: no JDK of version %s or newer found' "$needed_jdk"
    if [[ -n $seen ]]; then printf '; only%s' "$seen"; fi
    printf '.\n  Install one (a package such as temurin-%s-jdk or openjdk-%s-jdk) ' "$needed_jdk" "$needed_jdk"
    printf 'or set JAVA_HOME to where it is.\n'
  } >&2
  return 1
}
