#!/usr/bin/env bash
# Pretends to be Java: says where it runs and with what, and makes an archive when asked to.
for argument; do
    case $argument in
        -Xshare:dump) dumps=yes ;;
        -XX:SharedArchiveFile=*) archive=${argument#*=} ;;
        -XX:DumpLoadedClassList=*) exit 0 ;;
    esac
done
if [[ -n ${dumps:-} ]]; then
    echo dumped >>"$SANDBOX/dumps"
    echo "Java talks while it dumps"
    [[ -z ${STUB_NO_ARCHIVE:-} ]] && echo classes >"$archive"
    exit
fi
echo "in $PWD"
echo "as process $$"
printf '<%s>\n' "$@"
exit "${STUB_EXIT:-0}"
