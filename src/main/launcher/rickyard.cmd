@echo off
rem Starts Rickyard. Keeps an archive of loaded classes, made on this machine by the first morning.
rem JAVA_HOME: which Java; RICKYARD_JAVA_OPTS: more options; RICKYARD_CACHE: where the archive is.
setlocal
set "JAR=%~dp0..\rickyard.jar"
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
if not defined RICKYARD_CACHE set "RICKYARD_CACHE=%LOCALAPPDATA%\rickyard"
set "ARCHIVE=%RICKYARD_CACHE%\classes-@project.version@.jsa"
set "OPTIONS=-XX:+UseSerialGC -XX:-UsePerfData %RICKYARD_JAVA_OPTS%"
if exist "%ARCHIVE%" (
  "%JAVA%" %OPTIONS% -Xshare:auto -Xlog:disable -Xlog:all=error:stderr "-XX:SharedArchiveFile=%ARCHIVE%" -jar "%JAR%" %*
  exit /b %ERRORLEVEL%
)
"%JAVA%" %OPTIONS% -jar "%JAR%" %*
set "STATUS=%ERRORLEVEL%"
if not "%1"=="morning" if not "%1"=="demo" exit /b %STATUS%
set "MADE=%RICKYARD_CACHE%\making-%RANDOM%"
mkdir "%MADE%\office\inbox" "%MADE%\office\registers" >nul 2>nul
"%JAVA%" -XX:+UseSerialGC -XX:-UsePerfData "-XX:ArchiveClassesAtExit=%MADE%\classes.jsa" -Xlog:disable -jar "%JAR%" morning "%MADE%\office" >nul 2>nul
if exist "%MADE%\classes.jsa" move /y "%MADE%\classes.jsa" "%ARCHIVE%" >nul
rmdir /s /q "%MADE%" >nul 2>nul
exit /b %STATUS%
