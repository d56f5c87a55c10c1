# shellcheck shell=bash
# Builds the program into target/app.* and names it in target/ready. Sourced by ./plumeline, whose variables it shares.
# shellcheck disable=SC2154

. "$root/scripts/lib/jdk.sh"
. "$root/scripts/lib/maven.sh"

say() { printf 'plumeline: %s\n' "$*" >&2; }

# sources_sum: one sum of everything the program is made from.
sources_sum() (
  cd "$root" || exit 1
  summer=(sha256sum)
  if ! command -v sha256sum > /dev/null; then summer=(shasum -a 256); fi
  LC_ALL=C
  export LC_ALL
  find pom.xml src/main examples/*.yaml -type f -print0 | sort -z | xargs -0 "${summer[@]}" | "${summer[@]}"
)

# same_sources: whether the present build is of these very sources (a checkout or a copy may have changed dates alone).
same_sources() {
  read_build
  local line last=''
  [[ -n $papers && -x $java && -f $app/plumeline.jar ]] || return 1
  while IFS= read -r line; do last=$line; done < "$root/target/ready"
  [[ $last == "$(sources_sum)" ]]
}

# refresh_dates: makes a build of the same sources pass the quick test again. Says nothing where the tree is read-only.
refresh_dates() {
  [[ -w $root/target && -w $root/target/ready && -w $app ]] || return 0
  date_jars "$app" && touch "$root/target/ready"
  if [[ ! -s $app/plumeline.aot ]]; then warm_up; fi
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
      *'[INFO] --- '*':compile (default-compile)'*) say 'compiling' ;;
      *'[INFO] --- '*copy-dependencies*) say 'putting the program together' ;;
    esac
  done
}

# warm_up: makes the JDK's start-up caches of the build that was read. The program runs without them too, only slower.
warm_up() {
  say 'preparing a quick start'
  rm -f "$app"/*.aot "$app/training.log"
  make_cache plumeline "${path//@/$app}" papers demo post animatic
  make_cache papers "${path//@/$app}:${papers//@/$app}" ask keep animatic
}

# make_cache NAME CLASSPATH COMMAND...: rehearses all commands but those named and keeps what they loaded. Native access is
# what the decoders of clips need; the cache wants the flags with which the program is started.
make_cache() {
  local conf=$app/$1.conf new=$app/$1.new name=$1 classes=$2
  shift 2
  if {
    "$java" -XX:AOTMode=record -XX:AOTConfiguration="$conf" -XX:+UseSerialGC \
      --enable-native-access=ALL-UNNAMED -Xlog:disable -cp "$classes" \
      plumeline.cli.Training "$@" &&
      "$java" -XX:AOTMode=create -XX:AOTConfiguration="$conf" -XX:AOTCache="$new" -XX:+UseSerialGC \
        --enable-native-access=ALL-UNNAMED -Xlog:disable -cp "$classes" && [[ -s $new ]]
  } >> "$app/training.log" 2>&1 9>&-; then
    mv -f "$new" "$app/$name.aot"
  else
    say "no quick start this time (see $app/training.log)"
  fi
  rm -f "$conf" "$new"
}

# make_build WORK: one build from scratch in the folder WORK, put into place when it is complete.
make_build() {
  local work=$1 log=$1/maven.log began=$SECONDS sum name jar
  find_jdk || return 1
  find_maven || return 1
  sum=$(sources_sum)
  (cd "$root" && MAVEN_OPTS="${MAVEN_OPTS-} -XX:+UseSerialGC -XX:TieredStopAtLevel=1" "$maven" -B -Dstyle.color=never \
    -Dplumeline.app -Dplumeline.target="$work" package 9>&- 2>&1) | show_progress "$log"
  if [[ ${PIPESTATUS[0]} != 0 ]]; then
    grep -E '^\[ERROR\] .*\.java:\[' "$log" | sort -u | head -20 >&2 || grep -E '^\[ERROR\] .' "$log" | head -5 >&2
    cp -f "$log" "$root/target/build.log"
    say "the build failed; all that Maven said is in $root/target/build.log"
    return 1
  fi
  path=@/plumeline.jar papers='@' clips='@'
  for jar in "$work"/app/lib/*.jar; do
    case ${jar##*/} in
      batik* | commons-* | fontbox* | graphics2d* | icu4j* | openhtmltopdf* | pdfbox* | xml* | xmpbox*)
        papers=$papers:@/lib/${jar##*/}
        ;;
      ffmpeg* | javacpp* | jsvg*) clips=$clips:@/lib/${jar##*/} ;;
      *) path=$path:@/lib/${jar##*/} ;;
    esac
  done
  papers=${papers#@:} clips=${clips#@:}
  name=app.${work##*.}
  app=$root/target/$name java=$JAVA_HOME/bin/java
  date_jars "$work/app" || return 1
  mv "$work/app" "$app" || return 1
  warm_up
  printf '%s\n' "$name" "$java" "$path" "$papers" "$clips" "$sum" > "$work/ready"
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
