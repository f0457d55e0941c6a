#!/usr/bin/env bash
# The command line as a user and a script meet it: exit codes, sentences on bad input, and nothing written on failure.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."

proofstone=$PWD/build/native/proofstone
site=$PWD/examples/sorrel-creek
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

wrong() {
  echo "$1"
  exit 1
}

# gives STATUS TEXT ARGUMENT...: the program exits with STATUS and says TEXT somewhere.
gives() {
  local status=$1 text=$2 output got=0
  shift 2
  output=$("$proofstone" "$@" 2>&1) || got=$?
  [ "$got" = "$status" ] || wrong "proofstone $* exited with $got instead of $status: $output"
  grep -qF -- "$text" <<<"$output" || wrong "proofstone $* should say: $text. It said: $output"
}

# spoiled FILE SENTENCE COMMAND...: a copy of the example in which COMMAND, run in its folder, spoils one file is refused
# with a sentence that names the file, and no report is written.
spoiled() {
  local file=$1 sentence=$2 output got=0
  shift 2
  rm -rf "$work/site"
  cp -r "$site" "$work/site"
  (cd "$work/site" && "$@")
  output=$("$proofstone" assess "$work/site" --findings "$work/findings.json" --report "$work/report.html" 2>&1) || got=$?
  [ "$got" = 3 ] || [ "$got" = 1 ] || wrong "$file spoiled by $*: exit $got: $output"
  grep -qF -- "$file" <<<"$output" || wrong "$file spoiled by $*: the file is not named: $output"
  grep -qF -- "$sentence" <<<"$output" || wrong "$file spoiled by $*: should say: $sentence. It said: $output"
  if [ -e "$work/findings.json" ] || [ -e "$work/report.html" ]; then
    wrong "$file spoiled by $*: something was written."
  fi
}

gives 0 'Exit codes' help
gives 0 'Specify Class V' assess examples/tansy-crossing
gives 0 'profile through Tansy Run' assess examples/tansy-crossing --units si
gives 2 'proofstone assess SITE'
gives 2 'is not known' dance
gives 2 'is not known' assess "$site" --colour
gives 2 'needs a value' assess "$site" --units
gives 2 'takes other words' assess
gives 0 'falls short' assess "$site"
gives 4 'falls short' assess "$site" --gate
gives 0 'm³/s' assess "$site" --units si
gives 3 'not known here' assess "$site" --units furlongs
gives 0 'published-curve' methods usace-bank-and-bed
gives 2 'No method is called' methods magic
gives 0 'Class III' classes
gives 0 'nothing better exists' blend examples/tansy-crossing fhwa-2 ridge-small ridge-large --mass '200 ton'
gives 0 'No blend of these materials keeps Class V' blend examples/tansy-crossing fhwa-5 ridge-small ridge-large
gives 0 'on average where the rock is good' count-plan fhwa-3
gives 0 "Owner's risk 10 %" count-plan fhwa-3 --owners-risk '10 %' --good-by '15 %' --stones-in-load 5 --alike-in-load 0.1
gives 0 'scalped' blend examples/tansy-crossing fhwa-2 ridge-small ridge-large --scalp '12 in'
gives 3 'scalp' blend examples/tansy-crossing fhwa-2 --scalp '-5 in'
gives 3 'No class is called' count-plan no-such
gives 0 'on average where the rock is good' count-plan examples/sorrel-creek fhwa-3
gives 3 'No class is called' count-plan examples/sorrel-creek no-such
gives 3 'No count is planned with this' count-plan fhwa-3 --owners-risk '80 %'
gives 3 'No class is called' blend examples/tansy-crossing no-such
gives 3 'No material is called' blend examples/tansy-crossing fhwa-2 gold
gives 3 'mass' blend examples/tansy-crossing fhwa-2 --mass '-5 ton'
gives 2 'takes other words' blend examples/tansy-crossing
gives 0 'D50' evaluate isbash 'velocity=10 ft/s'
gives 3 'velocity' evaluate isbash 'velocity=10 lb'
gives 3 'velocity' evaluate isbash
gives 2 'is not an input' evaluate isbash velocity
gives 0 'published check values kept' prove
gives 0 'stones on' outline photography/pictures/gravel.png --out "$work/outlines.json"
grep -q '"outlines":\[\[\[' "$work/outlines.json" || wrong "outline wrote no outlines."
gives 3 'This is no photograph' outline photography/pictures/gravel.png README.md --out "$work/none.json"
[ ! -e "$work/none.json" ] || wrong "outline wrote what it found of photographs that it refused."
head -c 90000 photography/pictures/gravel.png >"$work/cut.png"
gives 3 'cut off or damaged' outline "$work/cut.png"
gives 1 'does not exist' outline "$work/absent.jpg"
gives 2 'takes other words' outline
gives 3 '--edge' outline photography/pictures/gravel.png --edge '65'
gives 0 'Marker board 2 stands in' board 2 --out "$work/board.svg"
grep -q 'width="260.00mm"' "$work/board.svg" || wrong "The marker board is not in true scale."
gives 3 'no such board' board 9 --out "$work/none.svg"
gives 3 'no such board' board two --out "$work/none.svg"
gives 3 'not printed' board 1 --edge '2 mm' --out "$work/none.svg"
gives 2 '--out FILE.svg' board 1
gives 1 'absent.json' sample-water "$work/absent.json"
printf '{"from": "model"}' >"$work/grids.json"
gives 3 'The field "depth" is missing' sample-water "$work/grids.json"
printf '{"from": "model", "zero_depth": "dry", "moment": "one moment", "points": [[1, 2]], "depth": {"file": "d.tif", "unit": "ft"}, "velocity": {"file": "v.tif", "unit": "ft/s"}}' >"$work/grids.json"
gives 3 'cannot be read as a raster' sample-water "$work/grids.json"
printf '<LandXML version="1.2"><Units><Imperial linearUnit="foot"/></Units><CrossSects><CrossSect sta="240"><CrossSectSurf name="a"><PntList2D>-20 108 0 101 22 109</PntList2D></CrossSectSurf></CrossSect></CrossSects></LandXML>' >"$work/survey.xml"
stated=(--out "$work/sections" --vertical-datum 'NAVD 88' --starts left --energy-slope 0.003 --roughness 0.035)
gives 2 '--elevation-unit is not stated' read-sections "$work/survey.xml" "${stated[@]}"
gives 2 'Allowed: “ft” or' read-sections "$work/survey.xml" "${stated[@]}" --elevation-unit yards
gives 3 'you in m' read-sections "$work/survey.xml" "${stated[@]}" --elevation-unit m
[ ! -e "$work/sections" ] || wrong "read-sections wrote files of a survey that it refused."
gives 0 'section-240.csv' read-sections "$work/survey.xml" "${stated[@]}" --elevation-unit ft
grep -q '/sections/section-240' "$work/sections/sections-revision.json" || wrong "read-sections wrote no changes."
gives 0 'section-240.csv' read-sections "$work/survey.xml" "${stated[@]}" --elevation-unit ft
sed -i 's/108/109/' "$work/survey.xml"
gives 1 'Another file of this name' read-sections "$work/survey.xml" "${stated[@]}" --elevation-unit ft
gives 3 'cannot be read as a file of lines' read-sections "$work/survey.gpkg" "${stated[@]}" --elevation-unit ft
gives 2 '--runs is not stated' read-centreline "$work/survey.gpkg" --out "$work/sections"
gives 0 'The document is good' validate "$site"
gives 0 'Cost:' quantities "$site" --xlsx "$work/quantities.xlsx" --csv "$work/quantities.csv"
unzip -p "$work/quantities.xlsx" xl/sharedStrings.xml | grep -qF 'Cost (USD)' || wrong "The workbook lacks its costs."
grep -qF '"Outer bank","Rock, Class III, ordered",' "$work/quantities.csv" || wrong "The table lacks its rock."
gives 1 'not-there' quantities "$site" --xlsx "$work/not-there/quantities.xlsx"
gives 0 'Substitute made as safe' substitution "$site" --zone outer-bank --specific-gravity 2.45
gives 3 'No zone is called' substitution "$site" --zone nowhere --class fhwa-4
gives 3 'Nothing is substituted' substitution "$site" --zone outer-bank
gives 3 'not known here' substitution "$site" --zone outer-bank --angularity square
gives 0 'stands in' specification "$site" --out "$work/specification.html"
grep -qF 'Class III' "$work/specification.html" || wrong "The specification lacks its class."
gives 2 '--out' specification "$site"
gives 0 'stands in' report "$site" lot-acceptance --lot first-deliveries --out "$work/paper.html"
grep -qF 'What was looked at' "$work/paper.html" || wrong "The lot acceptance lacks its looks."
gives 0 'stands in' report "$site" design-book --out "$work/paper.html"
gives 3 'first-deliveries' report "$site" lot-acceptance --lot nowhere --out "$work/paper.html"
gives 3 'Nothing was taken down' report "$site" daily-report --day 1999-01-01 --out "$work/paper.html"
gives 3 'design-book' report "$site" poem --out "$work/paper.html"
gives 2 '--out' report "$site" findings
gives 0 'Steps' explain "$site" class.outer-bank
gives 0 'Sources' explain "$site" rock-size.outer-bank.design-flood.isbash
gives 2 'The findings are' explain "$site" no-such-finding
gives 2 'needs its zone' drawing "$site"
gives 3 'outer-bank' drawing "$site" --zone nowhere --out "$work/section.dxf"
gives 1 'cannot be written' drawing "$site" --zone outer-bank --out "$work/not-there/section.dxf"
gives 0 'in ft' drawing "$site" --zone outer-bank --out "$work/section.dxf"
grep -q 'ROCK-SOIL-FILLED' "$work/section.dxf" || wrong 'The drawing has no layer of soil-filled rock.'
gives 1 'does not exist' assess "$work/nowhere"
gives 1 'not-there' assess "$site" --report "$work/not-there/report.html"

# A whole site as one file.
section="section-0240.csv"
gives 2 '--out' pack "$site"
gives 1 'does not exist' pack "$work/nowhere" --out "$work/site.zip"
gives 1 'not-there' pack "$site" --out "$work/not-there/site.zip"
mkdir "$work/with-photo"
cp "$site"/* "$work/with-photo"
mkdir "$work/with-photo/photos"
photo=photos/$(sha256sum <photography/pictures/gravel.png | cut -c 1-64).png
cp photography/pictures/gravel.png "$work/with-photo/$photo"
gives 0 '1 photo.' pack "$work/with-photo" --out "$work/site.zip"
unzip -q "$work/site.zip" -d "$work/unpacked"
diff -r "$work/with-photo" "$work/unpacked" || wrong "The archive does not unpack to the folder that was packed."
gives 0 '1 photo.' pack "$work/site.zip" --out "$work/again.zip"
cmp "$work/site.zip" "$work/again.zip" || wrong "A site that is packed twice gives other bytes."
cp -r "$work/with-photo" "$work/with-position"
sed -i 's|"kind": "quick look",|"kind": "quick look", "position": {"latitude": "39.7°", "longitude": "-104.9°"},|' "$work/with-position/site.json"
grep -q latitude "$work/with-position/site.json" || wrong "No look of the example got a position."
gives 0 '1 photo is left out' pack "$work/with-position" --without-positions --out "$work/placeless.zip"
unzip -p "$work/placeless.zip" site.json >"$work/placeless.json"
grep -q latitude "$work/placeless.json" && wrong "A site that is packed without positions has one."
gives 0 'has 0 revisions' join "$work/with-position" "$work/placeless.zip" --out "$work/with-placeless.zip"
"$proofstone" assess "$site" >"$work/of-folder.txt"
"$proofstone" assess "$work/site.zip" >"$work/of-archive.txt"
cmp "$work/of-folder.txt" "$work/of-archive.txt" || wrong "An archive is assessed otherwise than its folder."
head -c 2000 "$work/site.zip" >"$work/cut.zip"
gives 3 'cut off or damaged' assess "$work/cut.zip"
cp README.md "$work/text.zip"
gives 3 'This is no ZIP file' assess "$work/text.zip"
(cd "$work/unpacked" && zip -q "$work/no-site.zip" "$section" && zip -q -P secret "$work/secret.zip" site.json)
gives 3 'no site in this archive' assess "$work/no-site.zip"
gives 3 'encrypted' assess "$work/secret.zip"
(cd "$work/unpacked" && zip -q "$work/lacking.zip" site.json)
gives 3 'was not supplied' assess "$work/lacking.zip"
truncate -s 400M "$work/zeros.csv"
(cd "$work" && zip -q -1 swelling.zip zeros.csv && rm zeros.csv)
gives 3 'more than a site holds' assess "$work/swelling.zip"
gives 2 '--out' join "$work/site.zip" "$site"
gives 0 'No changes cross' join "$work/site.zip" "$site" --out "$work/joined.zip"
gives 3 'These are two sites' join "$work/site.zip" examples/tansy-crossing --out "$work/none.zip"
[ ! -e "$work/none.zip" ] || wrong "join wrote an archive of two sites."
for person in Lind Brandt; do
  # shellcheck disable=SC2016  # they are JavaScript's
  node -e '
    const { readFileSync, writeFileSync } = require("node:fs");
    const [, folder, author] = process.argv;
    const site = JSON.parse(readFileSync(`${folder}/site.json`, "utf8"));
    const after = [site.revisions.at(-1).id];
    const changes = [{ set: "/name", to: `Creek of ${author}` }];
    site.revisions.push({ id: author, after, time: "2026-09-01T10:00:00Z", author, note: "Named", changes });
    writeFileSync(`${folder}/${author}.json`, JSON.stringify(site, null, 2));' "$work/unpacked" "$person"
done
gives 0 '/name' join "$work/unpacked/Lind.json" "$work/unpacked/Brandt.json" --out "$work/joined.zip"
gives 0 'passed over: set to Creek of' join "$work/unpacked/Brandt.json" "$work/unpacked/Lind.json" --out "$work/joined.zip"
gives 0 'The document is good' validate "$work/joined.zip"

spoiled "$section" 'does not exist' rm "$section"
spoiled "$section" 'empty' truncate -s 0 "$section"
spoiled "$section" 'too large' truncate -s 1G "$section"
spoiled "$section" 'row' sed -i 's/117,/117 ft,/' "$section"
spoiled "$section" 'row' sed -i 's/^26,/NaN,/' "$section"
spoiled "$section" 'row' sed -i 's/^50,/10,/' "$section"
spoiled "$section" '' cp /bin/true "$section"
count="count-first-deliveries.csv"
spoiled "$count" 'row' sed -i '5s/,.*/,-3/' "$count"
spoiled "$count" 'row' sed -i '5s/,.*/,12;5/' "$count"
spoiled bank-soil.csv 'The sieves are not in order' sed -i 's/^No. 10,/No. 60,/' bank-soil.csv
spoiled bank-soil.csv 'these look like percents retained' sed -i '3,$ s/,.*/,0/; $ s/,.*/,96/' bank-soil.csv
spoiled site.json 'line' truncate -s 400 site.json
spoiled site.json 'empty' truncate -s 0 site.json

echo "the commands keep their contract"
