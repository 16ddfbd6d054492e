# Finds a Java of version 17 or later: JAVA_HOME first, then the java on the path. Sets java_home.

java_advice="Install a Java development kit, version 17 or later (Debian, Ubuntu: apt-get install openjdk-17-jdk), or point JAVA_HOME at one."

# The major version of the Java in folder $1; nothing if there is none.
java_version_of() {
  [ -n "$1" ] && [ -x "$1/bin/java" ] || return 0
  if [ -r "$1/release" ]; then
    sed -n 's/^JAVA_VERSION="\([0-9]*\).*/\1/p' "$1/release"
  else
    "$1/bin/java" -version 2>&1 | sed -n '1s/.*version "\([0-9]*\).*/\1/p'
  fi
}

java_home=
found=
on_path=$(command -v java || true)
if [ -n "$on_path" ]; then on_path=$(dirname "$(dirname "$(readlink -f "$on_path")")"); fi
for candidate in "${JAVA_HOME-}" "$on_path"; do
  version=$(java_version_of "$candidate")
  [ -n "$version" ] || continue
  if [ "$version" -ge 17 ]; then
    java_home=$candidate
    break
  fi
  found="$found ($candidate is version $version)"
done
if [ -z "$java_home" ]; then
  printf '%s\n' "Hosewright needs Java 17 or later and found none$found." "$java_advice" >&2
  exit 4
fi
