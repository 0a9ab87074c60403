#!/usr/bin/env bash
# Pretends to be Debian's installer: a JDK and a Maven appear where the test has laid them out.
echo "$DEBIAN_FRONTEND $*" >>"$SANDBOX/installs"
case "$*" in
    *install*"${STUB_UNKNOWN_PACKAGE:-none}"*) exit 100 ;;
    *install*jdk*) mv "$SANDBOX/packages/jdk" "$FOOTING_JVM_DIR/java-17" ;;
    *install*maven*) cp "$SANDBOX/packages/mvn" "$PATH/mvn" ;;
esac
