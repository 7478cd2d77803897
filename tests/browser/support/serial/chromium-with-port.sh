#!/bin/sh
# Chromium in a mount namespace of its own, where the first serial port is the pseudo-terminal SURAE_PORT and the policies
# are those in the folder SURAE_POLICIES. Nothing changes outside. Needs root.
exec unshare -m sh -ec '
  mount --bind "$SURAE_POLICIES" /etc/chromium
  mount --bind "$SURAE_PORT" /dev/ttyS0
  exec "$SURAE_CHROMIUM" "$@"' sh "$@"
