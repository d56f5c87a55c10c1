# shellcheck shell=bash
# Finds Maven, or fetches the release named in .mvn/wrapper/maven-wrapper.properties. Sourced; needs `root`.
# shellcheck disable=SC2154

# wrapper_property NAME: prints its value.
wrapper_property() {
  local line
  while IFS= read -r line || [[ -n $line ]]; do
    case $line in "$1="*) printf '%s\n' "${line#*=}" ;; esac
  done < "$root/.mvn/wrapper/maven-wrapper.properties"
}

# settings_mirror: prints the address of the mirror that the user's Maven settings name for everything or for Central.
settings_mirror() {
  local settings=${HOME-}/.m2/settings.xml text mirror of url
  [[ -r $settings ]] || return 0
  text=$(< "$settings")
  while [[ $text == *'<mirror>'*'</mirror>'* ]]; do
    text=${text#*<mirror>}
    mirror=${text%%</mirror>*}
    of=${mirror#*<mirrorOf>}
    of=${of%%</mirrorOf>*}
    url=${mirror#*<url>}
    url=${url%%</url>*}
    case ",${of//[[:space:]]/}," in
      *,central,* | *,\*,* | *,external:\*,*)
        printf '%s\n' "${url//[[:space:]]/}"
        return 0
        ;;
    esac
  done
}

sha512_of() {
  if command -v sha512sum > /dev/null; then sha512sum < "$1"; else shasum -a 512 < "$1"; fi
}

# fetch URL FILE
fetch() {
  if command -v curl > /dev/null; then
    curl --fail --silent --show-error --location --retry 3 --output "$2" "$1"
  elif command -v wget > /dev/null; then
    wget --quiet --tries=3 --output-document="$2" "$1"
  else
    printf 'plumeline: neither curl nor wget is here to fetch Maven with; install one of them, or Maven itself.\n' >&2
    return 1
  fi
}

# find_maven: sets maven to a Maven that runs, fetching one where there is none.
find_maven() {
  if maven=$(command -v mvn 2> /dev/null); then return 0; fi
  local url sum name home base part got
  url=$(wrapper_property distributionUrl)
  sum=$(wrapper_property distributionSha512Sum)
  name=${url##*/}
  name=${name%-bin.tar.gz}
  home=${MAVEN_USER_HOME:-${HOME-}/.m2}/wrapper/$name-${sum:0:12}
  maven=$home/bin/mvn
  if [[ -x $maven ]]; then return 0; fi
  base=${MVNW_REPOURL:-$(settings_mirror)}
  if [[ -n $base ]]; then url=${base%/}/org/apache/maven/${url#*/org/apache/maven/}; fi
  printf 'plumeline: no Maven on the PATH; fetching %s\n' "$name" >&2
  mkdir -p "${home%/*}" || return 1
  part=$(mktemp -d "${home%/*}/part.XXXXXX") || return 1
  if ! fetch "$url" "$part/maven.tar.gz"; then
    rm -rf "$part"
    printf 'plumeline: Maven could not be fetched.\n  Install Maven 3.8 or newer, or set MVNW_REPOURL to a repository that can be reached.\n' >&2
    return 1
  fi
  got=$(sha512_of "$part/maven.tar.gz")
  if [[ ${got%% *} != "$sum" ]]; then
    rm -rf "$part"
    printf 'plumeline: the Maven that was fetched is not the one named in .mvn/wrapper (its SHA-512 differs); not used.\n' >&2
    return 1
  fi
  # Unpacked aside and moved in one step, so that two builds at once cannot leave half a Maven behind.
  if ! tar -xzf "$part/maven.tar.gz" -C "$part" || { ! mv "$part/$name" "$home" 2> /dev/null && [[ ! -x $maven ]]; }; then
    rm -rf "$part"
    printf 'plumeline: Maven could not be unpacked into %s.\n' "$home" >&2
    return 1
  fi
  rm -rf "$part"
}
