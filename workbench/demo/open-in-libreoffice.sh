#!/bin/sh
# Opens the demo workbooks in a second spreadsheet, which knows nothing of Washdown, to see that the files are sound.
# Not a part of the tests: it installs a large Debian package where it is missing.
set -eu

cd "$(dirname "$0")/../.."
made=out/libreoffice
mkdir -p "$made"

if ! command -v soffice >/dev/null || ! command -v pdftoppm >/dev/null; then
  apt-get update -qq
  DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends libreoffice-calc poppler-utils
fi

profile=$(mktemp -d)
trap 'rm -rf "$profile"' EXIT

convert() {
  soffice --headless "-env:UserInstallation=file://$profile" --convert-to "$1" --outdir "$2" "$3" >/dev/null
}

for name in demo-bid-us demo-bid-metric; do
  workbook=out/$name.xlsx
  [ -f "$workbook" ] || {
    echo "$workbook is missing. Make it first: npm run demo" >&2
    exit 1
  }
  # Every sheet as it was read: first the values, then the formulas.
  convert 'csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,false,false,false,-1' "$made/$name-values" "$workbook"
  convert 'csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,false,true,false,-1' "$made/$name-formulas" "$workbook"
  convert pdf "$made" "$workbook"
  pdftoppm -r 80 -png "$made/$name.pdf" "$made/$name"

  values=$(cat "$made/$name-values/$name-Estimate.csv")
  formulas=$(cat "$made/$name-formulas/$name-Estimate.csv")
  case $formulas in
    *[Ww][Aa][Ss][Hh]_[Ww][Aa][Tt][Ee][Rr]*) echo "$name: formulas are there" ;;
    *) echo "$name: the formulas are gone" >&2 && exit 1 ;;
  esac
  printf '%s\n' "$values"
done
echo "Pictures to look at: $made/*.png"
