# shellcheck shell=bash
# Builds the program into target/app.* and names it in target/ready. Sourced by ./plumeline; needs `root`.

. "$root/scripts/lib/jdk.sh"
. "$root/scripts/lib/maven.sh"

say() { printf 'plumeline: %s\n' "$*" >&2; }

# sources_sum: one sum of everything the program is made from.
sources_sum() (
  cd "$root" || exit 1
  if command -v sha256sum > /dev/null; then sum=(sha256sum); else sum=(shasum -a 256); fi
  LC_ALL=C
  export LC_ALL
  find pom.xml src/main -type f -print0 | sort -z | xargs -0 "${sum[@]}" | "${sum[@]}"
)

# same_sources: whether the present build is of these very sources (a checkout or a copy may have changed dates alone).
same_sources() {
  read_build
  local line sum=''
  [[ -n $path && -x $java && -f $app/plumeline.jar ]] || return 1
  while IFS= read -r line; do sum=$line; done < "$root/target/ready"
  [[ $sum == "$(sources_sum)" ]]
}

# refresh_dates: makes a build of the same sources pass the quick test again. Says nothing where the tree is read-only.
refresh_dates() {
  [[ -w $root/target && -w $root/target/ready && -w $app ]] || return 0
  date_jars "$app" && touch "$root/target/ready"
  if [[ ! -s $app/plumeline.aot || $(cat "$app/trained" 2> /dev/null) != "$root" ]]; then
    warm_up "$app" "$java" "${path//@/$app}"
  fi
}

# date_jars FOLDER: gives every jar one old date, by which ./plumeline knows them as the ones that were built here.
date_jars() { TZ=UTC0 find "$1" -name '*.jar' -exec touch -t 200001010000 {} +; }

# Takes the lock for as long as this shell runs; a dead owner's lock is free again.
lock_build() {
  if command -v flock > /dev/null; then
    exec 9> "$root/target/lock" || return 1
    if ! flock -n 9; then
      say 'waiting for another build of this folder'
      flock 9 || return 1
    fi
    return 0
  fi
  local owner told=''
  until ln -s "$$" "$root/target/lock.link" 2> /dev/null; do
    owner=$(readlink "$root/target/lock.link") || continue
    if ! kill -0 "$owner" 2> /dev/null; then
      rm -f "$root/target/lock.link"
      continue
    fi
    if [[ -z $told ]]; then say "waiting for another build of this folder (process $owner)"; fi
    told=yes
    sleep 0.3
  done
}

unlock_build() {
  if [[ $(readlink "$root/target/lock.link" 2> /dev/null) == "$$" ]]; then rm -f "$root/target/lock.link"; fi
  exec 9>&-
}

# show_progress: reads Maven's lines, keeps them in the log given, and tells the few that say where it stands.
show_progress() {
  local line fetched=0
  while IFS= read -r line; do
    printf '%s\n' "$line" >> "$1"
    case $line in
      *'Downloaded from'*.jar*)
        fetched=$((fetched + 1))
        if ((fetched == 1)); then say 'fetching the libraries it needs (the first time only)'; fi
        if ((fetched % 25 == 0)); then say "  $fetched fetched"; fi
        ;;
      *'[INFO] --- '*compile*) say 'compiling' ;;
      *'[INFO] --- '*copy-dependencies*) say 'putting the program together' ;;
    esac
  done
}

# warm_up FOLDER JAVA CLASSPATH: makes the JDK's start-up cache. The program runs without one too, only slower.
warm_up() {
  say 'preparing a quick start'
  rm -f "$1/plumeline.aot" "$1/plumeline.aot.new"
  if "$2" -XX:AOTCacheOutput="$1/plumeline.aot.new" -XX:+UseSerialGC -Xlog:disable -cp "$3" plumeline.cli.Training \
    > "$1/training.log" 2>&1 9>&- && [[ -s $1/plumeline.aot.new ]]; then
    mv -f "$1/plumeline.aot.new" "$1/plumeline.aot"
    printf '%s\n' "$root" > "$1/trained"
  else
    say "no quick start this time (see $1/training.log)"
    rm -f "$1/plumeline.aot.new"
  fi
}

# make_build WORK: one build from scratch in the folder WORK, put into place when it is complete.
make_build() {
  local work=$1 log=$1/maven.log began=$SECONDS sum name dest jar line='@/plumeline.jar'
  find_jdk && find_maven || return 1
  sum=$(sources_sum)
  (cd "$root" && MAVEN_OPTS="${MAVEN_OPTS-} -XX:+UseSerialGC -XX:TieredStopAtLevel=1" "$maven" -B -Dstyle.color=never \
    -Dplumeline.app -Dplumeline.target="$work" package 9>&- 2>&1) | show_progress "$log"
  if [[ ${PIPESTATUS[0]} != 0 ]]; then
    grep -E '^\[(ERROR|FATAL)\]' "$log" | head -20 >&2 || tail -20 "$log" >&2
    cp -f "$log" "$root/target/build.log"
    say "the build failed; all that Maven said is in $root/target/build.log"
    return 1
  fi
  for jar in "$work"/app/lib/*.jar; do line=$line:@/lib/${jar##*/}; done
  name=app.${work##*.}
  dest=$root/target/$name
  date_jars "$work/app" && mv "$work/app" "$dest" || return 1
  warm_up "$dest" "$JAVA_HOME/bin/java" "${line//@/$dest}"
  printf '%s\n' "$name" "$JAVA_HOME/bin/java" "$line" "$sum" > "$work/ready"
  # Dated at the build's start: a source saved while it ran counts as newer.
  touch -r "$work/start" "$work/ready"
  mv -f "$work/ready" "$root/target/ready" || return 1
  remove_old "$name"
  say "ready after $((SECONDS - began)) s"
}

# remove_old NAME: removes builds but this one and the one before it, which may still be running.
remove_old() {
  local folder count=0
  for folder in $(cd "$root/target" && ls -dt app.* 2> /dev/null); do
    count=$((count + 1))
    if ((count > 2)) && [[ $folder != "$1" ]]; then rm -rf "${root:?}/target/$folder"; fi
  done
}

# ensure_build: leaves an up-to-date build in place, or returns 1 having said why.
ensure_build() {
  if ! { mkdir -p "$root/target" && [[ -w $root/target ]]; } 2> /dev/null; then
    if same_sources; then return 0; fi
    say "there is no up-to-date build here, and $root/target cannot be written to make one"
    return 1
  fi
  lock_build || return 1
  local status=0 work=''
  read_build
  if is_stale; then
    if same_sources; then
      refresh_dates
    else
      say 'building (a minute or so)'
      work=$(mktemp -d "$root/target/build.XXXXXX") || return 1
      # shellcheck disable=SC2064
      trap "rm -rf '${work//\'/\'\\\'\'}'" EXIT
      trap 'exit 130' INT
      trap 'exit 143' TERM
      touch "$work/start"
      make_build "$work" || status=1
      rm -rf "$work"
      trap - EXIT INT TERM
    fi
  fi
  unlock_build
  return $status
}
