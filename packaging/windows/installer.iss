; Installer for Windows, for Inno Setup 6. UNTESTED: nobody has run this recipe on Windows yet.
;
;   py packaging\bundle.py
;   iscc packaging\windows\installer.iss
;
; It installs for the present user, without administrator's rights, and opens *.gardencanvas by double click.

#define Name "Garden Canvas"
#define Version "0.1.0"
#define Program "gardencanvas.exe"
#define Kind "GardenCanvas.Garden"

[Setup]
AppId=org.gardencanvas.GardenCanvas
AppName={#Name}
AppVersion={#Version}
DefaultDirName={localappdata}\Programs\{#Name}
DefaultGroupName={#Name}
PrivilegesRequired=lowest
DisableProgramGroupPage=yes
LicenseFile=..\..\LICENSE
OutputDir=..\..\dist
OutputBaseFilename=gardencanvas-{#Version}-setup
ChangesAssociations=yes
ArchitecturesInstallIn64BitMode=x64compatible

[Files]
Source: "..\..\dist\gardencanvas\*"; DestDir: "{app}"; Flags: recursesubdirs ignoreversion

[Icons]
Name: "{group}\{#Name}"; Filename: "{app}\{#Program}"

[Registry]
Root: HKCU; Subkey: "Software\Classes\.gardencanvas"; ValueType: string; ValueData: "{#Kind}"; Flags: uninsdeletevalue
Root: HKCU; Subkey: "Software\Classes\.gardencanvas"; ValueType: string; ValueName: "Content Type"; ValueData: "application/vnd.gardencanvas+json"
Root: HKCU; Subkey: "Software\Classes\{#Kind}"; ValueType: string; ValueData: "Garden plan"; Flags: uninsdeletekey
Root: HKCU; Subkey: "Software\Classes\{#Kind}\shell\open\command"; ValueType: string; ValueData: """{app}\{#Program}"" ""%1"""

[Run]
Filename: "{app}\{#Program}"; Description: "Open {#Name}"; Flags: nowait postinstall skipifsilent
