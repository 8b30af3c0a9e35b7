@echo off
rem Starts Rickyard. Keeps an archive of loaded classes, made on this machine by the first morning.
rem JAVA_HOME: which Java; RICKYARD_JAVA_OPTS: more options; RICKYARD_CACHE: where the archive is.
setlocal
set "JAR=%~dp0..\rickyard.jar"
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
if not defined RICKYARD_CACHE set "RICKYARD_CACHE=%LOCALAPPDATA%\rickyard"
set "ARCHIVE=%RICKYARD_CACHE%\classes-@project.version@.jsa"
set "OPTIONS=-XX:+UseSerialGC -XX:MaxNewSize=64m -XX:MinHeapFreeRatio=20 -XX:TieredStopAtLevel=1 -XX:-UsePerfData %RICKYARD_JAVA_OPTS%"
if exist "%ARCHIVE%" (
  "%JAVA%" %OPTIONS% -Xshare:auto -Xlog:disable "-Xlog:all=error,cds*=off:stderr" "-XX:SharedArchiveFile=%ARCHIVE%" "-Drickyard.classes=%ARCHIVE%" -jar "%JAR%" %*
  exit /b %ERRORLEVEL%
)
"%JAVA%" %OPTIONS% -jar "%JAR%" %*
set "STATUS=%ERRORLEVEL%"
if not "%1"=="morning" if not "%1"=="demo" exit /b %STATUS%
set "MADE=%RICKYARD_CACHE%\making-%RANDOM%"
mkdir "%MADE%" >nul 2>nul
set "RICKYARD_OCR=none"
"%JAVA%" %OPTIONS% "-XX:DumpLoadedClassList=%MADE%\classes" -Xlog:disable -cp "%JAR%" rickyard.cli.ClassTraining "%MADE%" >nul 2>nul
if exist "%MADE%\classes" "%JAVA%" %OPTIONS% -Xshare:dump "-XX:SharedClassListFile=%MADE%\classes" "-XX:SharedArchiveFile=%MADE%\classes.jsa" -Xlog:disable -cp "%JAR%" >nul 2>nul
if exist "%MADE%\classes.jsa" move /y "%MADE%\classes.jsa" "%ARCHIVE%" >nul
rmdir /s /q "%MADE%" >nul 2>nul
exit /b %STATUS%
