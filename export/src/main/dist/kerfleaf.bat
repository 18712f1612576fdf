@echo off
rem Runs kerfleaf with the Java that JAVA_HOME names, else with the one on the path.
setlocal
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
rem An earlier start may have kept the classes as they are in memory; Java passes over what does not fit.
set "kept=%LOCALAPPDATA%\Kerfleaf\Cache\archives"
set "archive=none"
if exist "%kept%\name" set /p archive=<"%kept%\name"
if "%KERFLEAF_ARCHIVE%"=="off" set "archive=none"
"%java%" "-XX:SharedArchiveFile=%kept%\%archive%" "-Dkerfleaf.archive=%kept%\%archive%" -Xlog:disable -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Djava.awt.headless=true -jar "%~dp0kerfleaf.jar" %*
exit /b %ERRORLEVEL%
