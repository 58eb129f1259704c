#!/bin/sh
# Disk image for macOS. UNTESTED: nobody has run this recipe on macOS yet.
#
#   sh packaging/macos/make_image.sh
#
# It builds the application, tells the Finder which files it opens, signs it for this machine only (a signature
# for others needs a developer's certificate and notarisation) and packs it into dist/.
set -eu
cd "$(dirname "$0")/../.."
version=$(sed -n 's/^__version__ = "\(.*\)"/\1/p' gardencanvas/__init__.py)
python3 packaging/bundle.py
app="dist/Garden Canvas.app"
plist="$app/Contents/Info.plist"
tell() { /usr/libexec/PlistBuddy -c "$1" "$plist"; }
tell "Set :CFBundleShortVersionString $version"
tell "Add :CFBundleDocumentTypes array"
tell "Add :CFBundleDocumentTypes:0 dict"
tell "Add :CFBundleDocumentTypes:0:CFBundleTypeName string Garden plan"
tell "Add :CFBundleDocumentTypes:0:CFBundleTypeRole string Editor"
tell "Add :CFBundleDocumentTypes:0:LSItemContentTypes array"
tell "Add :CFBundleDocumentTypes:0:LSItemContentTypes:0 string org.gardencanvas.garden"
tell "Add :UTExportedTypeDeclarations array"
tell "Add :UTExportedTypeDeclarations:0 dict"
tell "Add :UTExportedTypeDeclarations:0:UTTypeIdentifier string org.gardencanvas.garden"
tell "Add :UTExportedTypeDeclarations:0:UTTypeConformsTo array"
tell "Add :UTExportedTypeDeclarations:0:UTTypeConformsTo:0 string public.json"
tell "Add :UTExportedTypeDeclarations:0:UTTypeTagSpecification dict"
tell "Add :UTExportedTypeDeclarations:0:UTTypeTagSpecification:public.filename-extension string gardencanvas"
tell "Add :UTExportedTypeDeclarations:0:UTTypeTagSpecification:public.mime-type string application/vnd.gardencanvas+json"
codesign --force --deep --sign - "$app"
hdiutil create -volname "Garden Canvas" -srcfolder "$app" -ov -format UDZO "dist/gardencanvas-$version.dmg"
