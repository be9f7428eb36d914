@echo off
rem Starts everything: no argument = the web app with the demo open; else the command line. Builds itself on the first start.
setlocal
set "OUT=%~dp0artifacts\app"
where dotnet >nul 2>nul || (echo hypocaust: the .NET 10 SDK is not installed; see https://dotnet.microsoft.com/download 1>&2 & exit /b 69)
dotnet publish "%~dp0src\Hypocaust.Cli" -c Release --nologo -v quiet -o "%OUT%" >"%TEMP%\hypocaust-build.log" 2>&1 || (type "%TEMP%\hypocaust-build.log" 1>&2 & exit /b 70)
dotnet "%OUT%\hypocaust.dll" %*
