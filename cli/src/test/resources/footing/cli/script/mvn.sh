#!/usr/bin/env bash
# Pretends to be Maven: counts its builds and leaves what a build leaves.
if [[ $1 == -v ]]; then
    echo "Apache Maven ${STUB_MAVEN_VERSION:-3.8.7}"
    exit
fi
echo "$*" >>"$SANDBOX/builds"
echo "[INFO] Building footing-core"
sleep 0.2
if [[ -n ${STUB_MAVEN_FAILS:-} ]]; then
    echo "[ERROR] this source is broken"
    exit 3
fi
mkdir -p cli/target/app/lib
echo jar >cli/target/app/lib/footing-core.jar
echo jar >cli/target/app/footing-cli-1.jar
