@echo off
rem Starts the command line. Needs Java 17 or newer: that of JAVA_HOME, or the one on the path.
setlocal
set "home=%~dp0.."
set "java=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
"%java%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xshare:auto -jar "%home%\lib\taperwright-command-${project.version}.jar" %*
exit /b %ERRORLEVEL%
