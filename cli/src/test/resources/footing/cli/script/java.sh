#!/usr/bin/env bash
# Pretends to be Java: says where it runs and with what, and makes an archive when asked to.
for argument; do
    case $argument in
        -Xshare:dump) dumps=yes ;;
        -XX:SharedArchiveFile=*) archive=${argument#*=} ;;
        -XX:DumpLoadedClassList=*) lists=yes ;;
        serve) serves=yes ;;
    esac
done
if [[ -n ${lists:-} ]]; then
    [[ -z ${serves:-} ]] && exit
    echo rehearsed >>"$SANDBOX/rehearsals"
    [[ -z ${STUB_NO_SERVER:-} ]] && echo "Footing is at http://127.0.0.1:1/"
    exec sleep "${STUB_NO_SERVER:-60}"
fi
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
