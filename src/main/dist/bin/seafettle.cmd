@echo off
rem Starts Seafettle with the Java of JAVA_HOME, else with the java on the PATH (17 or newer).
rem The class-data archive is made on the first report, beside the jars. SEAFETTLE_OPTS takes
rem further options for Java.
setlocal
set "HOME_DIR=%~dp0.."
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
set "ARCHIVE=%HOME_DIR%\lib\seafettle.jsa"
set "CDS=-XX:SharedArchiveFile=%ARCHIVE%"
if not exist "%ARCHIVE%" if "%~1"=="report" set "CDS=-XX:ArchiveClassesAtExit=%ARCHIVE%"
set "RUN=-XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xmx256m"
rem a season is a long run: there the better compiler and a collector on all cores pay, and the survivor
rem spaces hold what several reports need while they are printed; a compiler that inlines less takes
rem less than half the time and makes nothing slower, since here thousands of methods are warm and few hot
if "%~1"=="season" set "RUN=-XX:+UseParallelGC -XX:-UseAdaptiveSizePolicy -XX:SurvivorRatio=3 -Xmn320m -Xmx480m -XX:MaxInlineLevel=6 -XX:FreqInlineSize=100 -XX:InlineSmallCode=1000"
"%JAVA%" "%CDS%" %RUN% -Xlog:disable -Djava.awt.headless=true %SEAFETTLE_OPTS% -jar "%HOME_DIR%\lib\seafettle.jar" %*
exit /b %ERRORLEVEL%
