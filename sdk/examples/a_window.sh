#!/bin/sh
# A window by curl: its stool sized, a wrong reading refused with a pointer to it, what to buy, and a house kept and
# changed.
# Needs the service at LONGPOINT_URL; a key in LONGPOINT_API_KEY is sent where it is set.
set -eu
url=${LONGPOINT_URL:-http://127.0.0.1:8000}

# The key goes in by standard input, not on the command line, where every user of the machine could read it.
ask() {
    path=$1
    shift
    { [ -z "${LONGPOINT_API_KEY:-}" ] || printf 'header = "Authorization: Bearer %s"\n' "$LONGPOINT_API_KEY"; } |
        curl --silent --show-error --retry 2 --max-time 30 --config - --header 'Content-Type: application/json' \
            "$@" "$url$path"
    echo
}

echo 'The stool:'
ask /v1/stool --data '{
  "jamb_width": "30 5/8 in", "jamb_depth": "3 1/8 in", "reveal": "3/16 in", "casing_width": "2 1/2 in",
  "horn": "3/4 in", "nosing": "7/8 in", "apron_thickness": "5/8 in"
}'

echo 'A reading without its unit:'
ask /v1/stool --data '{
  "jamb_width": "30 5/8", "jamb_depth": "3 1/8 in", "reveal": "3/16 in", "casing_width": "2 1/2 in",
  "horn": "3/4 in", "nosing": "7/8 in", "apron_thickness": "5/8 in"
}'

echo 'What to buy for it:'
ask /v1/cut-list --data '{
  "unit": "in",
  "trim_specs": {"painted": {"casing": {"width": "2 1/2", "thickness": "5/8"}, "reveal": "3/16"}},
  "openings": [{
    "mark": "P1", "room": "Pantry", "trim": "painted", "bottom": "casing",
    "readings": {"jamb_width": "24", "jamb_height": "24"}
  }],
  "stock": [{"profile": "casing", "sticks": [{"length": "8 ft", "price": "9.20"}]}]
}'

echo 'A house kept; sent again with the same key it is kept once:'
house='{"name": "Curlew Cottage", "unit": "in", "trim_specs": {"painted":
  {"casing": {"width": "2 1/2", "thickness": "5/8"}, "reveal": "3/16"}}}'
key="\"curlew-$(date +%s)-$$\""
kept=$(ask /v1/schedules --header "Idempotency-Key: $key" --data "$house")
again=$(ask /v1/schedules --header "Idempotency-Key: $key" --data "$house")
[ "$kept" = "$again" ]
id=$(echo "$kept" | sed 's/.*"id":"\([^"]*\)".*/\1/')
echo "$kept"

echo 'Its kerf changed, if nobody changed it since it was read:'
etag=$(ask "/v1/schedules/$id" --output /dev/null --write-out '%header{etag}')
ask "/v1/schedules/$id" --request PUT --header "If-Match: $etag" \
    --data "$(echo "$house" | sed '1s/{/{"kerf": "3\/32", /')"

echo 'The same change again, from what stands no longer:'
ask "/v1/schedules/$id" --request PUT --header "If-Match: $etag" --data "$house"
