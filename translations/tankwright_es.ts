<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name>Drawings</name>
    <message>
        <source>Cove, radius %1</source>
        <translation>Media caña, radio %1</translation>
    </message>
    <message>
        <source>%1, %2 thick</source>
        <comment>layer and its thickness</comment>
        <translation>%1, %2 de espesor</translation>
    </message>
    <message>
        <source>Undisturbed ground</source>
        <translation>Terreno sin remover</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>clear length %1</source>
        <translation>largo interior %1</translation>
    </message>
    <message>
        <source>clear width %1</source>
        <translation>ancho interior %1</translation>
    </message>
    <message>
        <source>clear diameter %1</source>
        <translation>diámetro interior %1</translation>
    </message>
    <message>
        <source>clear floor length %1</source>
        <translation>largo interior del piso %1</translation>
    </message>
    <message>
        <source>clear floor width %1</source>
        <translation>ancho interior del piso %1</translation>
    </message>
    <message>
        <source>clear floor diameter %1</source>
        <translation>diámetro interior del piso %1</translation>
    </message>
    <message>
        <source>clear rim length %1</source>
        <translation>largo interior en el borde %1</translation>
    </message>
    <message>
        <source>clear rim width %1</source>
        <translation>ancho interior en el borde %1</translation>
    </message>
    <message>
        <source>clear rim diameter %1</source>
        <translation>diámetro interior en el borde %1</translation>
    </message>
    <message>
        <source>pit top length %1</source>
        <translation>largo de la excavación arriba %1</translation>
    </message>
    <message>
        <source>pit top width %1</source>
        <translation>ancho de la excavación arriba %1</translation>
    </message>
    <message>
        <source>pit top diameter %1</source>
        <translation>diámetro de la excavación arriba %1</translation>
    </message>
    <message>
        <source>A</source>
        <comment>letter of the section</comment>
        <translation>A</translation>
    </message>
    <message>
        <source>Scale 1 : %1</source>
        <translation>Escala 1 : %1</translation>
    </message>
    <message>
        <source>rim and ground: 0</source>
        <translation>borde y suelo: 0</translation>
    </message>
    <message>
        <source>overflow: %1 down</source>
        <translation>rebosadero: %1 abajo</translation>
    </message>
    <message>
        <source>pit floor: %1 down</source>
        <translation>fondo de la excavación: %1 abajo</translation>
    </message>
    <message>
        <source>pit floor diameter %1</source>
        <translation>diámetro del fondo de la excavación %1</translation>
    </message>
    <message>
        <source>pit floor width %1</source>
        <translation>ancho del fondo de la excavación %1</translation>
    </message>
    <message>
        <source>clear depth %1</source>
        <translation>prof. interior %1</translation>
    </message>
    <message>
        <source>pit depth %1</source>
        <translation>prof. de excavación %1</translation>
    </message>
    <message>
        <source>corner peg at the pit edge, or centre</source>
        <translation>estaca de esquina en la orilla de la excavación, o centro</translation>
    </message>
    <message>
        <source>%1, at A-A</source>
        <translation>%1, en A-A</translation>
    </message>
    <message>
        <source>mark on the string for the right angle, 3-4-5</source>
        <translation>marca en el cordel para la escuadra, 3-4-5</translation>
    </message>
    <message>
        <source>section</source>
        <translation>corte</translation>
    </message>
    <message>
        <source>offset peg, 1 m clear of the digging; A1 and A2 belong to A</source>
        <translation>estaca apartada, a 1 m de la excavación; A1 y A2 son de A</translation>
    </message>
    <message>
        <source>rim collar length %1</source>
        <translation>largo del collar del borde %1</translation>
    </message>
    <message>
        <source>rim collar width %1</source>
        <translation>ancho del collar del borde %1</translation>
    </message>
    <message>
        <source>rim collar diameter %1</source>
        <translation>diámetro del collar del borde %1</translation>
    </message>
    <message>
        <source>clear floor: %1 down</source>
        <translation>piso interior: %1 abajo</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>quantity (unit)</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>source</source>
        <translation>fuente</translation>
    </message>
    <message>
        <source>roof</source>
        <translation>techo</translation>
    </message>
    <message>
        <source>ground</source>
        <translation>terreno</translation>
    </message>
    <message>
        <source>rain on the tank</source>
        <translation>lluvia sobre el tanque</translation>
    </message>
    <message>
        <source>people</source>
        <translation>personas</translation>
    </message>
    <message>
        <source>animals</source>
        <translation>animales</translation>
    </message>
    <message>
        <source>beds</source>
        <translation>camas</translation>
    </message>
    <message>
        <source>Left bar, comes in:</source>
        <translation>Barra izquierda, entra:</translation>
    </message>
    <message>
        <source>Right bar, needed:</source>
        <translation>Barra derecha, se necesita:</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>falta</translation>
    </message>
    <message>
        <source>in %1, needed %2</source>
        <comment>amounts of water in a month</comment>
        <translation>entran %1, se necesitan %2</translation>
    </message>
    <message>
        <source>missing %1</source>
        <translation>faltan %1</translation>
    </message>
    <message>
        <source>Enter the weather, what brings water and what needs it, to see them month by month.</source>
        <translation>Anote el clima, lo que trae agua y lo que la necesita, para verlos mes por mes.</translation>
    </message>
    <message>
        <source>Water in a month</source>
        <translation>Agua en un mes</translation>
    </message>
    <message>
        <source>8 years in ten</source>
        <translation>8 años de cada diez</translation>
    </message>
    <message>
        <source>middle year</source>
        <translation>año intermedio</translation>
    </message>
    <message>
        <source>all years</source>
        <translation>todos los años</translation>
    </message>
    <message>
        <source>the last %1, not to be taken out</source>
        <translation>los últimos %1, que no se deben sacar</translation>
    </message>
    <message>
        <source>full: %1</source>
        <translation>lleno: %1</translation>
    </message>
    <message>
        <source>Enter the weather to see how the water in the tank rises and falls.</source>
        <translation>Anote el clima para ver cómo sube y baja el agua en el tanque.</translation>
    </message>
    <message>
        <source>Water in the tank</source>
        <translation>Agua en el tanque</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>menos de %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Years in ten in which the water lasts:</source>
        <translation>Años de cada diez en que alcanza el agua:</translation>
    </message>
    <message>
        <source>target</source>
        <translation>meta</translation>
    </message>
    <message>
        <source>this tank and its beds</source>
        <translation>este tanque y sus camas</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>meta %1</translation>
    </message>
    <message>
        <source>Enter the beds to see what size of tank waters how much of them.</source>
        <translation>Anote las camas de cultivo para ver qué tamaño de tanque riega cuántas.</translation>
    </message>
    <message>
        <source>The map is being worked out.</source>
        <translation>Se está calculando el mapa.</translation>
    </message>
    <message>
        <source>Enter the weather and the beds to see what size of tank waters how much of them.</source>
        <translation>Anote el clima y las camas de cultivo para ver qué tamaño de tanque riega cuántas.</translation>
    </message>
    <message>
        <source>Area of the beds</source>
        <translation>Área de las camas</translation>
    </message>
    <message>
        <source>Water when the tank is full</source>
        <translation>Agua con el tanque lleno</translation>
    </message>
    <message>
        <source>being refined</source>
        <translation>se está afinando</translation>
    </message>
    <message>
        <source>this tank: %1</source>
        <translation>este tanque: %1</translation>
    </message>
    <message>
        <source>enough: %1</source>
        <translation>basta: %1</translation>
    </message>
    <message>
        <source>Enter the weather and what needs water to see how large a tank is enough.</source>
        <translation>Anote el clima y lo que necesita agua para ver qué tamaño de tanque basta.</translation>
    </message>
    <message>
        <source>Years in ten in which the water lasts</source>
        <translation>Años de cada diez en que alcanza el agua</translation>
    </message>
    <message>
        <source>the water lasts in %1 of %2 years</source>
        <translation>el agua alcanza en %1 de %2 años</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>part of an amount</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1: no water comes in.</source>
        <translation>%1: no entra agua.</translation>
    </message>
    <message>
        <source>%1: %2 come in (%3).</source>
        <translation>%1: entran %2 (%3).</translation>
    </message>
    <message>
        <source>Nothing is needed.</source>
        <translation>No se necesita nada.</translation>
    </message>
    <message>
        <source>%1 are needed (%2).</source>
        <translation>Se necesitan %1 (%2).</translation>
    </message>
    <message>
        <source>%1 of it are missing, on %2.</source>
        <translation>De eso faltan %1, en %2.</translation>
    </message>
    <message>
        <source>%1: half of the years hold %2 or more; one year in ten less than %3</source>
        <translation>%1: la mitad de los años hay %2 o más; un año de cada diez, menos de %3</translation>
    </message>
    <message>
        <source>Tank of %1, beds of %2: %3</source>
        <translation>Tanque de %1, camas de %2: %3</translation>
    </message>
    <message>
        <source>Tank of %1: %2</source>
        <translation>Tanque de %1: %2</translation>
    </message>
    <message>
        <source>Time since it was full</source>
        <translation>Tiempo desde que estaba lleno</translation>
    </message>
    <message>
        <source>Minutes since it was full</source>
        <translation>Minutos desde que estaba lleno</translation>
    </message>
    <message>
        <source>%1 min</source>
        <comment>minutes</comment>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>the line draws no lower than %1 over the floor</source>
        <translation>la tubería no saca agua más abajo de %1 sobre el piso</translation>
    </message>
    <message>
        <source>drawn down after %1</source>
        <translation>vaciado después de %1</translation>
    </message>
    <message>
        <source>The tank is not emptied through this line.</source>
        <translation>El tanque no se vacía por esta tubería.</translation>
    </message>
    <message>
        <source>How the tank empties is not known: %1.</source>
        <translation>No se sabe cómo se vacía el tanque: %1.</translation>
    </message>
    <message>
        <source>Water over the floor</source>
        <translation>Agua sobre el piso</translation>
    </message>
    <message>
        <source>After %1 the water stands %2 over the floor</source>
        <translation>Después de %1, el agua está a %2 sobre el piso</translation>
    </message>
    <message>
        <source>pit edge</source>
        <translation>orilla de la excavación</translation>
    </message>
    <message>
        <source>platform edge, level %1</source>
        <translation>orilla de la plataforma, nivel %1</translation>
    </message>
    <message>
        <source>cut face, up to the ground</source>
        <translation>cara del corte, sube hasta el terreno</translation>
    </message>
    <message>
        <source>fill face, down to the ground</source>
        <translation>cara del relleno, baja hasta el terreno</translation>
    </message>
    <message>
        <source>platform edge</source>
        <translation>orilla de la plataforma</translation>
    </message>
    <message>
        <source>natural ground, level (%1)</source>
        <translation>terreno natural, nivel (%1)</translation>
    </message>
    <message>
        <source>fall %1</source>
        <translation>pendiente %1</translation>
    </message>
    <message>
        <source>N</source>
        <comment>north</comment>
        <translation>N</translation>
    </message>
    <message>
        <source>spoil heap</source>
        <translation>montón de tierra sacada</translation>
    </message>
    <message>
        <source>%1 to the pit</source>
        <translation>%1 hasta la excavación</translation>
    </message>
    <message>
        <source>No flow: %1.</source>
        <translation>No corre agua: %1.</translation>
    </message>
    <message>
        <source>Tank full, no flow: %1.</source>
        <translation>Tanque lleno, no corre agua: %1.</translation>
    </message>
    <message>
        <source>Tank nearly empty, no flow: %1.</source>
        <translation>Tanque casi vacío, no corre agua: %1.</translation>
    </message>
    <message>
        <source>pipe</source>
        <translation>tubería</translation>
    </message>
    <message>
        <source>still water</source>
        <translation>agua quieta</translation>
    </message>
    <message>
        <source>head, tank full</source>
        <translation>carga, tanque lleno</translation>
    </message>
    <message>
        <source>head</source>
        <translation>carga</translation>
    </message>
    <message>
        <source>head, nearly empty</source>
        <translation>carga, casi vacío</translation>
    </message>
    <message>
        <source>suction</source>
        <translation>succión</translation>
    </message>
    <message>
        <source>high point</source>
        <translation>punto alto</translation>
    </message>
    <message>
        <source>Enter the way of the pipe to see the head of the water along it.</source>
        <translation>Anote el recorrido de la tubería para ver la carga del agua a lo largo de ella.</translation>
    </message>
    <message>
        <source>Level from the rim</source>
        <translation>Nivel desde el borde</translation>
    </message>
    <message>
        <source>Distance along the line</source>
        <translation>Distancia a lo largo de la tubería</translation>
    </message>
    <message>
        <source>%1 along: pipe level with the rim</source>
        <translation>A %1 de recorrido: tubería a ras del borde</translation>
    </message>
    <message>
        <source>%1 along: pipe %2 over the rim</source>
        <translation>A %1 de recorrido: tubería %2 sobre el borde</translation>
    </message>
    <message>
        <source>%1 along: pipe %2 under the rim</source>
        <translation>A %1 de recorrido: tubería %2 bajo el borde</translation>
    </message>
    <message>
        <source>%1, suction %2</source>
        <translation>%1, succión %2</translation>
    </message>
    <message>
        <source>%1, head %2</source>
        <translation>%1, carga %2</translation>
    </message>
    <message>
        <source>level with the rim</source>
        <translation>a ras del borde</translation>
    </message>
    <message>
        <source>%1 over the rim</source>
        <translation>%1 sobre el borde</translation>
    </message>
    <message>
        <source>%1 down</source>
        <translation>%1 abajo</translation>
    </message>
    <message>
        <source>rim: 0</source>
        <translation>borde: 0</translation>
    </message>
    <message>
        <source>sill: %1</source>
        <translation>umbral: %1</translation>
    </message>
    <message>
        <source>lip: %1</source>
        <translation>labio: %1</translation>
    </message>
    <message>
        <source>in a storm: %1</source>
        <translation>en un aguacero: %1</translation>
    </message>
    <message>
        <source>when blocked: %1</source>
        <translation>si se tapa: %1</translation>
    </message>
    <message>
        <source>The water level in a storm is not known: %1.</source>
        <translation>No se sabe el nivel del agua en un aguacero: %1.</translation>
    </message>
    <message>
        <source>The water level when the overflow is blocked is not known: %1.</source>
        <translation>No se sabe el nivel del agua con el rebosadero tapado: %1.</translation>
    </message>
    <message>
        <source>freeboard left %1</source>
        <translation>borde libre que queda %1</translation>
    </message>
    <message>
        <source>over the rim by %1</source>
        <translation>%1 por encima del borde</translation>
    </message>
    <message>
        <source>There is no room between the overflow and the rim to draw.</source>
        <translation>Entre el rebosadero y el borde no hay lugar para dibujar.</translation>
    </message>
    <message>
        <source>heights to scale, lengths not</source>
        <translation>alturas a escala, largos no</translation>
    </message>
    <message>
        <source>rim and platform: 0</source>
        <translation>borde y plataforma: 0</translation>
    </message>
    <message>
        <source>natural ground</source>
        <translation>terreno natural</translation>
    </message>
    <message>
        <source>tank empty</source>
        <translation>tanque vacío</translation>
    </message>
    <message>
        <source>tank full and leaking</source>
        <translation>tanque lleno y con fuga</translation>
    </message>
    <message>
        <source>No slip was searched for.</source>
        <translation>No se buscó ningún deslizamiento.</translation>
    </message>
    <message>
        <source>No slip was found: the ground down the fall does not make a sound section.</source>
        <translation>No se halló ningún deslizamiento: el terreno ladera abajo no forma un corte válido.</translation>
    </message>
    <message>
        <source>No slip was found: the ground down the fall is level.</source>
        <translation>No se halló ningún deslizamiento: el terreno ladera abajo es llano.</translation>
    </message>
    <message>
        <source>No slip was found: no circle through this ground has a factor.</source>
        <translation>No se halló ningún deslizamiento: ningún círculo por este terreno tiene un factor.</translation>
    </message>
    <message>
        <source>The search for a slip was stopped.</source>
        <translation>Se detuvo la búsqueda de deslizamientos.</translation>
    </message>
    <message>
        <source>load %1</source>
        <translation>sobrecarga %1</translation>
    </message>
    <message>
        <source>factor %1</source>
        <translation>factor %1</translation>
    </message>
    <message>
        <source>radius %1</source>
        <translation>radio %1</translation>
    </message>
    <message>
        <source>water in the ground</source>
        <translation>agua en el terreno</translation>
    </message>
    <message>
        <source>P1 stands inward of Q1, P2 of Q2, and so on</source>
        <translation>P1 está más adentro que Q1, P2 que Q2, y así sigue</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>month and year</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>water in the evening</source>
        <translation>agua al anochecer</translation>
    </message>
    <message>
        <source>wall under wet sacks</source>
        <translation>pared bajo costales mojados</translation>
    </message>
    <message>
        <source>filling starts</source>
        <translation>empieza el llenado</translation>
    </message>
    <message>
        <source>should start by</source>
        <translation>debe empezar a más tardar</translation>
    </message>
    <message>
        <source>full on %1</source>
        <translation>lleno el %1</translation>
    </message>
    <message>
        <source>not full within a year</source>
        <translation>no se llena en un año</translation>
    </message>
    <message>
        <source>Enter what flows into the tank to see how it fills for the first time.</source>
        <translation>Anote el agua que entra al tanque para ver cómo se llena por primera vez.</translation>
    </message>
    <message>
        <source>Height over the floor</source>
        <translation>Altura sobre el piso</translation>
    </message>
    <message>
        <source>this tank</source>
        <translation>este tanque</translation>
    </message>
    <message>
        <source>most water</source>
        <translation>el de más agua</translation>
    </message>
    <message>
        <source>cheapest that meets the target</source>
        <translation>el más barato que cumple la meta</translation>
    </message>
    <message>
        <source>fewest bags that meet the target</source>
        <translation>el de menos bolsas que cumple la meta</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Costo</translation>
    </message>
    <message>
        <source>Bags of cement</source>
        <translation>Bolsas de cemento</translation>
    </message>
    <message>
        <source>No size is within the limits.</source>
        <translation>Ningún tamaño está dentro de los límites.</translation>
    </message>
    <message>
        <source>Search the sizes to see which are worth their price.</source>
        <translation>Busque entre los tamaños para ver cuáles valen lo que cuestan.</translation>
    </message>
    <message>
        <source>building it, spread over its life</source>
        <translation>hacerlo, repartido en los años que dura</translation>
    </message>
    <message>
        <source>upkeep</source>
        <translation>mantenimiento</translation>
    </message>
    <message>
        <source>Enter the prices of linings to see what each costs a year.</source>
        <translation>Anote los precios de los revestimientos para ver cuánto cuesta cada uno al año.</translation>
    </message>
    <message>
        <source>Cost a year</source>
        <translation>Costo anual equivalente</translation>
    </message>
    <message>
        <source>goods and carrying</source>
        <translation>compras y acarreo</translation>
    </message>
    <message>
        <source>wages</source>
        <translation>pago de jornales</translation>
    </message>
    <message>
        <source>Enter prices and when the works start to see when money is needed.</source>
        <translation>Anote los precios y cuándo empieza la obra para ver cuándo se necesita dinero.</translation>
    </message>
    <message>
        <source>Money needed up to then</source>
        <translation>Dinero necesario hasta ese día</translation>
    </message>
    <message>
        <source>Money needed on the day</source>
        <translation>Dinero necesario ese día</translation>
    </message>
    <message>
        <source>when it rises, the outcome rises</source>
        <comment>of an input</comment>
        <translation>si sube, el resultado sube</translation>
    </message>
    <message>
        <source>when it rises, the outcome falls</source>
        <comment>of an input</comment>
        <translation>si sube, el resultado baja</translation>
    </message>
    <message>
        <source>goods and carrying %1</source>
        <comment>amount of money</comment>
        <translation>compras y acarreo %1</translation>
    </message>
    <message>
        <source>wages %1</source>
        <comment>amount of money</comment>
        <translation>pago de jornales %1</translation>
    </message>
    <message>
        <source>together up to then %1</source>
        <comment>amount of money</comment>
        <translation>en total hasta ese día %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>date: amounts</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2 a year (building it %3, upkeep %4), lasts %5</source>
        <comment>lining: amounts, years</comment>
        <translation>%1: %2 al año (hacerlo %3, mantenimiento %4), dura %5</translation>
    </message>
    <message>
        <source>%1 a year for each %2</source>
        <comment>amount of money, volume</comment>
        <translation>%1 al año por cada %2</translation>
    </message>
    <message>
        <source>%1: %2 of the spread</source>
        <comment>input, percentage</comment>
        <translation>%1: %2 de la variación</translation>
    </message>
    <message>
        <source>%1 across, %2 deep</source>
        <comment>diameter, depth</comment>
        <translation>%1 de diámetro, %2 de profundidad</translation>
    </message>
    <message>
        <source>%1 × %2 × %3</source>
        <comment>length, width, depth</comment>
        <translation>%1 × %2 × %3</translation>
    </message>
    <message>
        <source>%1 cannot be built.</source>
        <translation>%1: no se puede construir.</translation>
    </message>
    <message>
        <source>Add an option to see the tanks side by side.</source>
        <translation>Agregue una opción para ver los tanques lado a lado.</translation>
    </message>
    <message>
        <source>None of the options can be built.</source>
        <translation>Ninguna de las opciones se puede construir.</translation>
    </message>
    <message>
        <source>labourers</source>
        <translation>peones</translation>
    </message>
    <message>
        <source>masons</source>
        <translation>albañiles</translation>
    </message>
    <message>
        <source>people wetting</source>
        <translation>personas que mojan</translation>
    </message>
    <message>
        <source>goes on until %1 →</source>
        <translation>sigue hasta el %1 →</translation>
    </message>
    <message>
        <source>Enter when the works start and who is there to see the people of each day.</source>
        <translation>Anote cuándo empieza la obra y con quiénes se cuenta para ver las personas de cada día.</translation>
    </message>
    <message>
        <source>People on a day</source>
        <translation>Personas en un día</translation>
    </message>
    <message>
        <source>8 times in ten</source>
        <translation>8 veces de cada diez</translation>
    </message>
    <message>
        <source>half of the times less</source>
        <translation>la mitad de las veces, menos</translation>
    </message>
    <message>
        <source>all times</source>
        <translation>todas las veces</translation>
    </message>
    <message>
        <source>as entered</source>
        <translation>con lo anotado</translation>
    </message>
    <message>
        <source>What the spread comes from:</source>
        <translation>De dónde viene la variación:</translation>
    </message>
    <message>
        <source>raises the outcome</source>
        <comment>an input that grows</comment>
        <translation>hace subir el resultado</translation>
    </message>
    <message>
        <source>lowers the outcome</source>
        <comment>an input that grows</comment>
        <translation>hace bajar el resultado</translation>
    </message>
    <message>
        <source>How far the numbers may be off is not worked out yet.</source>
        <translation>Todavía no se ha calculado cuánto pueden fallar los números.</translation>
    </message>
    <message>
        <source>first coat as planned, and best</source>
        <translation>primera capa según el plan, y la mejor semana</translation>
    </message>
    <message>
        <source>first coat as planned</source>
        <translation>primera capa según el plan</translation>
    </message>
    <message>
        <source>best week</source>
        <translation>mejor semana</translation>
    </message>
    <message>
        <source>Enter the weather to see in which weeks coats are likely to stay undisturbed.</source>
        <translation>Anote el clima para ver en qué semanas es probable que las capas queden sin contratiempos.</translation>
    </message>
    <message>
        <source>planned, best</source>
        <translation>prevista, la mejor</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>prevista</translation>
    </message>
    <message>
        <source>best</source>
        <translation>la mejor</translation>
    </message>
    <message>
        <source>Times in ten that coats of this week stay undisturbed</source>
        <translation>Veces de cada diez en que las capas de esta semana quedan sin contratiempos</translation>
    </message>
    <message>
        <source>no work on this day</source>
        <translation>este día no se trabaja</translation>
    </message>
    <message>
        <source>work</source>
        <translation>trabajo</translation>
    </message>
    <message>
        <source>no room to slip</source>
        <translation>sin holgura</translation>
    </message>
    <message>
        <source>room to slip</source>
        <translation>holgura</translation>
    </message>
    <message>
        <source>kept wet</source>
        <translation>se mantiene mojado</translation>
    </message>
    <message>
        <source>filling</source>
        <translation>llenado</translation>
    </message>
    <message>
        <source>last day</source>
        <translation>último día</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>hasta el %1</translation>
    </message>
    <message>
        <source>%1: not before %2</source>
        <translation>%1: no antes del %2</translation>
    </message>
    <message>
        <source>Enter when the works start and who is there to see their days.</source>
        <translation>Anote cuándo empieza la obra y con quiénes se cuenta para ver los días de cada tarea.</translation>
    </message>
    <message>
        <source>%1 labourer</source>
        <translation>%1 peón</translation>
    </message>
    <message numerus="yes">
        <source>%1 labourers</source>
        <translation>
            <numerusform>%1 peón</numerusform>
            <numerusform>%1 peones</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 mason</source>
        <translation>%1 albañil</translation>
    </message>
    <message numerus="yes">
        <source>%1 masons</source>
        <translation>
            <numerusform>%1 albañil</numerusform>
            <numerusform>%1 albañiles</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 person wetting</source>
        <translation>%1 persona que moja</translation>
    </message>
    <message numerus="yes">
        <source>%1 people wetting</source>
        <translation>
            <numerusform>%1 persona que moja</numerusform>
            <numerusform>%1 personas que mojan</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>people (so many of them masons)</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>room to slip: %1</source>
        <translation>holgura: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>last day of something</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2; %3</source>
        <comment>task: when and who; how far it may slip</comment>
        <translation>%1: %2; %3</translation>
    </message>
    <message>
        <source>%1 for wetting</source>
        <comment>litres of water</comment>
        <translation>%1 para mojar</translation>
    </message>
    <message>
        <source>nobody</source>
        <translation>nadie</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>date: people</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 flow in</source>
        <comment>litres</comment>
        <translation>entran %1</translation>
    </message>
    <message>
        <source>%1 are lost</source>
        <comment>litres</comment>
        <translation>se pierden %1</translation>
    </message>
    <message>
        <source>%1: %2. In the evening %3 over the floor, %4.</source>
        <comment>date: flows; level, volume</comment>
        <translation>%1: %2. Al anochecer, %3 sobre el piso, %4.</translation>
    </message>
    <message>
        <source>%1 to keep the %2 of wall above the water wet.</source>
        <translation>%1 para mantener mojados los %2 de pared que quedan sobre el agua.</translation>
    </message>
    <message>
        <source>Week from %1: undisturbed %2 times of %3; heavy rain %4, frost %5, heat or cold %6</source>
        <translation>Semana desde el %1: sin contratiempos %2 veces de %3; lluvia fuerte %4, helada %5, calor o frío %6</translation>
    </message>
    <message>
        <source>The person is %1 tall.</source>
        <translation>La persona mide %1.</translation>
    </message>
    <message>
        <source>cost not known</source>
        <translation>costo desconocido</translation>
    </message>
    <message>
        <source>%1: cost not known</source>
        <comment>lining</comment>
        <translation>%1: costo desconocido</translation>
    </message>
    <message>
        <source>plumb line and bob</source>
        <translation>cordel y plomada</translation>
    </message>
    <message>
        <source>level side: spirit level or hose</source>
        <translation>lado a nivel: nivel de burbuja o manguera</translation>
    </message>
    <message>
        <source>slanting side lies on the pit wall</source>
        <translation>el lado inclinado se apoya en la pared de la excavación</translation>
    </message>
    <message>
        <source>straight staff stands on the pit wall</source>
        <translation>una vara recta se apoya en la pared de la excavación</translation>
    </message>
    <message>
        <source>%1 up</source>
        <translation>%1 hacia arriba</translation>
    </message>
    <message>
        <source>%1 out</source>
        <translation>%1 hacia afuera</translation>
    </message>
    <message>
        <source>The board gives the lean of the pit wall, as it is dug.</source>
        <translation>La plantilla da la inclinación de la pared de la excavación, tal como se cava.</translation>
    </message>
    <message>
        <source>The pit wall is dug upright.</source>
        <translation>La pared de la excavación se cava a plomo.</translation>
    </message>
    <message>
        <source>Plaster follows it: the clear wall leans the same.</source>
        <translation>El repello la sigue: la pared interior tiene la misma inclinación.</translation>
    </message>
    <message>
        <source>%1, level with the string: 0</source>
        <translation>%1, a ras del cordel: 0</translation>
    </message>
    <message>
        <source>%1, dig to here: %2 down</source>
        <translation>%1, cave hasta aquí: %2 hacia abajo</translation>
    </message>
    <message>
        <source>%1, the clear floor: %2 down</source>
        <translation>%1, el piso interior: %2 hacia abajo</translation>
    </message>
    <message>
        <source>%1: %2 down</source>
        <translation>%1: %2 hacia abajo</translation>
    </message>
    <message>
        <source>clear face: inside of the finished plaster</source>
        <translation>cara interior: lado de adentro del repello terminado</translation>
    </message>
    <message>
        <source>coats, %1 thick in all, each brought up to the collar</source>
        <translation>capas, %1 de espesor en total, cada una llevada hasta el collar</translation>
    </message>
    <message>
        <source>pit wall, as it is dug; ground behind it</source>
        <translation>pared de la excavación, tal como se cava; detrás, el terreno</translation>
    </message>
    <message>
        <source>pipe, %1 outside</source>
        <translation>tubo, %1 por fuera</translation>
    </message>
    <message>
        <source>pipe, %1 outside as an example</source>
        <translation>tubo, %1 por fuera, como ejemplo</translation>
    </message>
    <message>
        <source>collar of stiff mortar all round the pipe</source>
        <translation>collar de mortero tieso todo alrededor del tubo</translation>
    </message>
    <message>
        <source>outside end: on beyond the pit edge, no joint in the wall</source>
        <translation>lado de afuera: sigue más allá de la orilla de la excavación, sin unión en la pared</translation>
    </message>
    <message>
        <source>clamp: the pipe cannot pull or shake on the rim</source>
        <translation>abrazadera: el tubo no puede correrse ni moverse sobre el borde</translation>
    </message>
    <message>
        <source>bell mouth, above the dead level</source>
        <translation>boca acampanada, más arriba del nivel muerto</translation>
    </message>
    <message>
        <source>dead level: %1 over the clear floor</source>
        <translation>nivel muerto: %1 sobre el piso interior</translation>
    </message>
    <message>
        <source>Pipe through the wall</source>
        <translation>Tubo a través de la pared</translation>
    </message>
    <message>
        <source>Pipe over the rim</source>
        <translation>Tubo por encima del borde</translation>
    </message>
    <message>
        <source>B</source>
        <comment>letter of the section</comment>
        <translation>B</translation>
    </message>
    <message>
        <source>%1, at B-B</source>
        <translation>%1, en B-B</translation>
    </message>
    <message>
        <source>pit floor length %1</source>
        <translation>largo del fondo de la excavación %1</translation>
    </message>
</context>
<context>
    <name>Figures</name>
    <message>
        <source>diameter %1</source>
        <translation>diámetro %1</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Fuente: %1</translation>
    </message>
    <message>
        <source>%1: net %2, to order %3</source>
        <translation>%1: neto %2, para pedir %3</translation>
    </message>
    <message>
        <source>Holds, filled to the overflow</source>
        <translation>Cabida, lleno hasta el rebosadero</translation>
    </message>
    <message>
        <source>%1 to the rim</source>
        <translation>%1 hasta el borde</translation>
    </message>
    <message>
        <source>Prismoidal formula: depth ÷ 6 × (floor + 4 × middle + surface), all clear inside areas.</source>
        <translation>Fórmula del prismoide: profundidad ÷ 6 × (piso + 4 × medio + superficie), todas áreas interiores.</translation>
    </message>
    <message>
        <source>Water depth %1, floor %2, water surface %3.</source>
        <translation>Profundidad del agua %1, piso %2, superficie del agua %3.</translation>
    </message>
    <message>
        <source>Usable water</source>
        <translation>Agua útil</translation>
    </message>
    <message>
        <source>Held to the overflow less what lies below the dead depth.</source>
        <translation>Lo que cabe hasta el rebosadero menos lo que queda bajo la profundidad muerta.</translation>
    </message>
    <message>
        <source>%1 less %2 below %3.</source>
        <translation>%1 menos %2 por debajo de %3.</translation>
    </message>
    <message>
        <source>%1: shell %2, to mix %3, cement %4</source>
        <translation>%1: volumen exacto %2, para mezclar %3, cemento %4</translation>
    </message>
    <message>
        <source>Placed plaster × %1 loose ingredients, shared out by the parts of the mix; cement weighs %2.</source>
        <translation>Repello colocado × %1 de materiales sueltos, repartidos según las partes de la mezcla; el cemento pesa %2.</translation>
    </message>
    <message>
        <source>Unevenness %1 on coat 1, waste %2, whole bags.</source>
        <translation>Irregularidad %1 en la capa 1, desperdicio %2, bolsas enteras.</translation>
    </message>
    <message>
        <source>Cement to order</source>
        <translation>Cemento para pedir</translation>
    </message>
    <message>
        <source>of %1 each</source>
        <translation>de %1 cada una</translation>
    </message>
    <message>
        <source>From the exact shells and the mixes, with waste, sieving loss and the bulking of damp sand.</source>
        <translation>De las capas exactas y las mezclas, con desperdicio, pérdida al cernir y abultamiento de la arena húmeda.</translation>
    </message>
    <message>
        <source>Soil, sand and stone to bring</source>
        <translation>Tierra, arena y piedra para traer</translation>
    </message>
    <message>
        <source>Soil %1
Sand %2
Stone %3</source>
        <translation>Tierra %1
Arena %2
Piedra %3</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>People and dates are not part of this project.</source>
        <translation>Este proyecto no tiene personas ni fechas.</translation>
    </message>
    <message>
        <source>%1: %2 (%3 to %4)</source>
        <translation>%1: %2 (%3 a %4)</translation>
    </message>
    <message>
        <source>Start filling no later than</source>
        <translation>Empezar a llenar a más tardar</translation>
    </message>
    <message>
        <source>%1: %2 to %3</source>
        <translation>%1: %2 a %3</translation>
    </message>
    <message>
        <source>The clear inside, grown by all coats square to their faces and by the stone bed under the floor.</source>
        <translation>El interior terminado, agrandado por todas las capas a escuadra con sus caras y por el lecho de piedra bajo el piso.</translation>
    </message>
    <message>
        <source>Pit floor %1.</source>
        <translation>Fondo de la excavación %1.</translation>
    </message>
    <message>
        <source>Loose spoil %1.</source>
        <translation>Tierra sacada, suelta: %1.</translation>
    </message>
    <message>
        <source>Pit to dig</source>
        <translation>Excavación por cavar</translation>
    </message>
    <message>
        <source>pit at ground %1, pit depth %2</source>
        <translation>excavación a ras de suelo %1, profundidad de la excavación %2</translation>
    </message>
    <message>
        <source>Finished clear inside</source>
        <translation>Medidas interiores terminadas</translation>
    </message>
    <message>
        <source>floor %1
rim %2
clear depth %3</source>
        <translation>piso %1
borde %2
profundidad interior %3</translation>
    </message>
    <message>
        <source>What the water touches, after all coats. The walls lean out by batter × height.</source>
        <translation>Lo que toca el agua, con todas las capas puestas. Las paredes se abren talud × altura.</translation>
    </message>
    <message>
        <source>Floor %1, walls along the slope %2, opening at the rim %3.</source>
        <translation>Piso %1, paredes por la inclinación %2, boca en el borde %3.</translation>
    </message>
    <message>
        <source>Latitude, weather, source and needs are not known yet: see the tab Water.</source>
        <translation>Aún no se conocen la latitud, el clima, la fuente de agua y las necesidades: vea la pestaña Agua.</translation>
    </message>
    <message>
        <source>Reference evapotranspiration %1 a year, rain %2.</source>
        <translation>Evapotranspiración de referencia %1 al año, lluvia %2.</translation>
    </message>
    <message>
        <source>Sizes that meet the target</source>
        <translation>Tamaños que cumplen la meta</translation>
    </message>
    <message>
        <source>smallest tank %1</source>
        <translation>tanque mínimo %1</translation>
    </message>
    <message>
        <source>no tank up to %1</source>
        <translation>ningún tanque de hasta %1</translation>
    </message>
    <message>
        <source>largest beds %1</source>
        <translation>camas de hasta %1</translation>
    </message>
    <message>
        <source>no beds, however small</source>
        <translation>ninguna cama, por pequeña que sea</translation>
    </message>
    <message>
        <source>The tank&apos;s plan is made larger or smaller at the same depth and batter; the beds keep their shares. Every size is run through all weather years.</source>
        <translation>La planta del tanque se agranda o se achica con la misma profundidad y el mismo talud; las camas conservan sus proporciones. Cada tamaño se calcula con todos los años de clima.</translation>
    </message>
    <message>
        <source>Years in ten with water all year</source>
        <translation>Años de cada diez con agua todo el año</translation>
    </message>
    <message>
        <source>Each day: water held + source + runoff + rain − evaporation − seepage − need, kept between empty and full; a day is short of water when less than the need can be drawn.</source>
        <translation>Cada día: agua guardada + fuente de agua + escorrentía + lluvia − evaporación − filtración − necesidad, siempre entre vacío y lleno; falta agua en un día cuando se puede sacar menos de lo que se necesita.</translation>
    </message>
    <message>
        <source>%1 of %2 weather years pass without a day short of water. Days met: %3, water met: %4.</source>
        <translation>%1 de %2 años de clima pasan sin un día en que falte agua. Días cubiertos: %3, agua cubierta: %4.</translation>
    </message>
    <message>
        <source>days short of water in a mean year %1, in the worst %2</source>
        <translation>días con falta de agua en un año promedio %1, en el peor %2</translation>
    </message>
    <message>
        <source>almost any tank</source>
        <translation>casi cualquier tanque</translation>
    </message>
    <message>
        <source>beds of %1 or more</source>
        <translation>camas de %1 o más</translation>
    </message>
    <message>
        <source>Target: %1 years in ten with water all year.</source>
        <translation>Meta: %1 años de cada diez con agua todo el año.</translation>
    </message>
    <message>
        <source>Cost, all together</source>
        <translation>Costo, en total</translation>
    </message>
    <message>
        <source>Money is not part of this project: see the tab Money.</source>
        <translation>El dinero no es parte de este proyecto: vea la pestaña Dinero.</translation>
    </message>
    <message>
        <source>Materials %1, labour %2, other %3, carriage %4, contingency %5.</source>
        <translation>Materiales %1, mano de obra %2, otros %3, acarreo %4, imprevistos %5.</translation>
    </message>
    <message>
        <source>Paid %1, given %2.</source>
        <translation>Se paga %1, se aporta %2.</translation>
    </message>
    <message>
        <source>%1 for each cubic metre held.</source>
        <translation>%1 por cada metro cúbico de cabida.</translation>
    </message>
    <message>
        <source>Prices that are missing: %1. The sum is too small.</source>
        <translation>Precios que faltan: %1. La suma queda corta.</translation>
    </message>
    <message>
        <source>over %1</source>
        <translation>más de %1</translation>
    </message>
    <message>
        <source>paid %1, given %2</source>
        <translation>se paga %1, se aporta %2</translation>
    </message>
    <message>
        <source>%1 after the first day of the works, %2</source>
        <translation>%1 después del primer día de la obra, %2</translation>
    </message>
</context>
<context>
    <name>Handouts</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>morning</source>
        <translation>mañana</translation>
    </message>
    <message>
        <source>noon</source>
        <translation>mediodía</translation>
    </message>
    <message>
        <source>evening</source>
        <translation>tarde</translation>
    </message>
    <message>
        <source>Start filling no later than %1.</source>
        <translation>Empiece a llenar a más tardar el %1.</translation>
    </message>
    <message>
        <source>Filling begun. Until water covers a wall, its sacks stay on and stay wet.</source>
        <translation>Llenado empezado. Hasta que el agua cubra una pared, sus costales se quedan puestos y mojados.</translation>
    </message>
    <message>
        <source>Work for each task</source>
        <translation>Trabajo de cada tarea</translation>
    </message>
    <message>
        <source>Task</source>
        <translation>Tarea</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Quién</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Cover the fresh coat with sacks and keep them wet day and night, rest days too. Tick each wetting. Plaster that dries early cracks and leaks.</source>
        <translation>Cubra la capa fresca con costales y manténgalos mojados día y noche, también los días de descanso. Marque cada mojada. El repello que se seca antes de tiempo se raja y pierde agua.</translation>
    </message>
    <message>
        <source>%1 across</source>
        <translation>%1 de diámetro</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <comment>length by width</comment>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>Holds when full</source>
        <translation>Cabida cuando está lleno</translation>
    </message>
    <message>
        <source>Can be drawn from it</source>
        <translation>Se le puede sacar</translation>
    </message>
    <message>
        <source>Clear size at the floor</source>
        <translation>Medidas interiores en el piso</translation>
    </message>
    <message>
        <source>Clear size at the rim</source>
        <translation>Medidas interiores en el borde</translation>
    </message>
    <message>
        <source>Pit to dig, at the ground</source>
        <translation>Excavación por cavar, a ras de suelo</translation>
    </message>
    <message>
        <source>Pit depth to dig</source>
        <translation>Profundidad por cavar</translation>
    </message>
    <message>
        <source>Clear depth when finished</source>
        <translation>Profundidad interior terminada</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>so many bags of so many kilograms</comment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Work, all together</source>
        <translation>Trabajo, en total</translation>
    </message>
    <message>
        <source>Work starts</source>
        <translation>Empieza el trabajo</translation>
    </message>
    <message>
        <source>Start filling no later than</source>
        <translation>Empezar a llenar a más tardar</translation>
    </message>
    <message>
        <source>Cement to buy: one picture for each bag.</source>
        <translation>Cemento por comprar: un dibujo por cada bolsa.</translation>
    </message>
    <message>
        <source>Cement to buy: one picture for every %1 bags, the last may be part.</source>
        <translation>Cemento por comprar: un dibujo por cada %1 bolsas; el último puede ser una parte.</translation>
    </message>
    <message>
        <source>Cement to buy</source>
        <translation>Cemento por comprar</translation>
    </message>
    <message>
        <source>No crew and dates were given, so these sheets have no work calendar and no wetting calendar.</source>
        <translation>No se dieron cuadrilla ni fechas, así que estas hojas no traen calendario de trabajo ni calendario de mojado.</translation>
    </message>
    <message>
        <source>Clear sizes are what the water fills. Pit sizes are what is dug; the lining takes up the rest.</source>
        <translation>Las medidas interiores son lo que llena el agua. Las medidas de la excavación son lo que se cava; el revestimiento ocupa lo demás.</translation>
    </message>
    <message>
        <source>The construction sheets are marked NOT FOR CONSTRUCTION: see the findings.</source>
        <translation>Las hojas de construcción llevan la marca NO APTO PARA CONSTRUIR: vea las observaciones.</translation>
    </message>
    <message>
        <source>Where the pegs stand</source>
        <translation>Dónde van las estacas</translation>
    </message>
    <message>
        <source>Measured from the centre O; x toward A, y toward B.</source>
        <translation>Medido desde el centro O; eje x hacia A, eje y hacia B.</translation>
    </message>
    <message>
        <source>Measured from peg A; x along side A to B, y square to it, into the pit.</source>
        <translation>Medido desde la estaca A; eje x por el lado de A a B, eje y a escuadra con él, hacia la excavación.</translation>
    </message>
    <message>
        <source>Peg</source>
        <translation>Estaca</translation>
    </message>
    <message>
        <source>What it marks</source>
        <translation>Qué marca</translation>
    </message>
    <message>
        <source>x</source>
        <translation>x</translation>
    </message>
    <message>
        <source>y</source>
        <translation>y</translation>
    </message>
    <message>
        <source>Check with the tape</source>
        <translation>Revisar con la cinta</translation>
    </message>
    <message>
        <source>From peg to peg</source>
        <translation>De estaca a estaca</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Qué es</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Largo</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Revisado</translation>
    </message>
    <message>
        <source>Batter board: how far the pit wall has come in</source>
        <translation>Plantilla del talud: cuánto ha entrado la pared de la excavación</translation>
    </message>
    <message>
        <source>Depth below ground</source>
        <translation>Profundidad bajo el suelo</translation>
    </message>
    <message>
        <source>In from the pit edge</source>
        <translation>Hacia adentro desde la orilla de la excavación</translation>
    </message>
    <message>
        <source>Depth rod: marks measured down from the string at ground level</source>
        <translation>Vara de profundidad: marcas medidas hacia abajo desde el cordel a ras de suelo</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Nivel</translation>
    </message>
    <message>
        <source>Below the string</source>
        <translation>Bajo el cordel</translation>
    </message>
    <message>
        <source>Marked</source>
        <translation>Marcado</translation>
    </message>
    <message>
        <source>Walls stand upright.</source>
        <translation>Las paredes van a plomo.</translation>
    </message>
    <message>
        <source>Walls lean outward: %1 out for each %2 up.</source>
        <translation>Las paredes se abren: %1 hacia afuera por cada %2 de altura.</translation>
    </message>
    <message>
        <source>Clear sizes are inside the finished plaster. Pit sizes are what is dug, before any lining. </source>
        <translation>Las medidas interiores son por dentro del repello terminado. Las medidas de la excavación son lo que se cava, antes de revestir. </translation>
    </message>
    <message>
        <source>Section A-A of the plan. </source>
        <translation>Corte A-A de la planta. </translation>
    </message>
    <message>
        <source>Foot of the wall, enlarged. Thickness of a coat is measured square to its face.</source>
        <translation>Pie de la pared, agrandado. El espesor de una capa se mide a escuadra con su cara.</translation>
    </message>
    <message>
        <source>NOT FOR CONSTRUCTION</source>
        <translation>NO APTO PARA CONSTRUIR</translation>
    </message>
    <message>
        <source>Caution. Pit walls can fall in: never work alone, keep spoil %1 back, keep a ladder in the pit. Cement burns skin and eyes, its dust harms the lungs: gloves, boots, wash at once. Lift bags two together. Fence the pit: people fall in and drown.</source>
        <translation>Cuidado. Las paredes de la excavación pueden derrumbarse: nunca trabaje solo, ponga la tierra sacada a %1 de la orilla, tenga una escalera dentro de la excavación. El cemento quema la piel y los ojos, su polvo daña los pulmones: guantes, botas, lavarse enseguida. Levanten las bolsas entre dos. Cerque la excavación: hay quien cae y se ahoga.</translation>
    </message>
    <message>
        <source>This bar is 100 mm on a true print.</source>
        <translation>Esta barra mide 100 mm si la impresión está a escala.</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Página %1 de %2</translation>
    </message>
    <message>
        <source>Local codes and licensed practice come first.</source>
        <translation>Las normas locales y el ejercicio profesional autorizado van primero.</translation>
    </message>
    <message>
        <source>Design mark %1</source>
        <translation>Marca del diseño %1</translation>
    </message>
    <message>
        <source>Work %1 to %2</source>
        <translation>Trabajo: %1 a %2</translation>
    </message>
    <message>
        <source>Farm water tank</source>
        <translation>Tanque de agua para la finca</translation>
    </message>
    <message>
        <source>no answer</source>
        <translation>sin respuesta</translation>
    </message>
    <message>
        <source>How each is reckoned</source>
        <translation>Cómo se calcula cada uno</translation>
    </message>
    <message>
        <source>Net: each coat&apos;s exact shell, taken from the geometry, times %1 loose parts for one of placed plaster, shared out by the parts of its mix. Cement weighs %2 loose.</source>
        <translation>Neto: el volumen exacto de cada capa, tomado de la geometría, por %1 partes sueltas por una de repello colocado, repartidas según las partes de su mezcla. El cemento suelto pesa %2.</translation>
    </message>
    <message>
        <source>Order: net with %1 for uneven dug faces (stone bed and coat 1) and %2 waste; soil and sand with %3 sieving loss, damp sand with %4 bulking; loose stone is %5 times the compacted bed; cement in whole bags of %6.</source>
        <translation>Pedido: neto más %1 por las caras cavadas irregulares (lecho de piedra y capa 1) y %2 de desperdicio; tierra y arena con %3 de pérdida al cernir, arena húmeda con %4 de abultamiento; la piedra suelta es %5 veces el lecho apisonado; cemento en bolsas enteras de %6.</translation>
    </message>
    <message>
        <source>Water: %1 for mixing, %2 for wetting each coat. Sacks: %3 each, %4 spare.</source>
        <translation>Agua: %1 para mezclar, %2 para mojar cada capa. Costales: %3 cada uno, %4 de reserva.</translation>
    </message>
    <message>
        <source>Layers</source>
        <translation>Capas</translation>
    </message>
    <message>
        <source>Layer</source>
        <translation>Capa</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Espesor</translation>
    </message>
    <message>
        <source>Face</source>
        <translation>Cara</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>Trust two, and the third follows</source>
        <translation>Confíe en dos, y la tercera sale sola</translation>
    </message>
    <message>
        <source>If these are right</source>
        <translation>Si estas son ciertas</translation>
    </message>
    <message>
        <source>then</source>
        <translation>entonces</translation>
    </message>
    <message>
        <source>by exact shells</source>
        <translation>por capas exactas</translation>
    </message>
    <message>
        <source>by area × thickness</source>
        <translation>por área × espesor</translation>
    </message>
    <message>
        <source>thickness and mix</source>
        <translation>espesor y mezcla</translation>
    </message>
    <message>
        <source>cement is</source>
        <translation>el cemento es</translation>
    </message>
    <message>
        <source>cement and mix</source>
        <translation>cemento y mezcla</translation>
    </message>
    <message>
        <source>coats are</source>
        <translation>las capas son</translation>
    </message>
    <message>
        <source>cement and thickness</source>
        <translation>cemento y espesor</translation>
    </message>
    <message>
        <source>mixes are, soil : sand : cement</source>
        <translation>las mezclas son, tierra : arena : cemento</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Net</source>
        <translation>Neto</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Pedido</translation>
    </message>
    <message>
        <source>Bought</source>
        <translation>Comprado</translation>
    </message>
    <message>
        <source>On site</source>
        <translation>En la obra</translation>
    </message>
    <message>
        <source>The customary bill as it was given stands beside what thicknesses and mixes need. Nothing has been scaled or averaged; all figures are net, without waste. Ratio: computed over customary.</source>
        <translation>La lista acostumbrada, tal como se dio, está junto a lo que piden los espesores y las mezclas. Nada se ha ajustado ni promediado; todas las cifras son netas, sin desperdicio. Razón: lo calculado entre lo acostumbrado.</translation>
    </message>
    <message>
        <source>Customary</source>
        <translation>Acostumbrado</translation>
    </message>
    <message>
        <source>Exact shells</source>
        <translation>Capas exactas</translation>
    </message>
    <message>
        <source>Ratio</source>
        <translation>Razón</translation>
    </message>
    <message>
        <source>Area × thickness</source>
        <translation>Área × espesor</translation>
    </message>
    <message>
        <source>Exact shells: the solid between the outer and inner face of each coat. Area × thickness: the clear inside face times the thickness, as reckoned on paper; it leaves out what the corners add.</source>
        <translation>Capas exactas: el sólido entre la cara de afuera y la de adentro de cada capa. Área × espesor: la cara interior terminada por el espesor, como se calcula en papel; deja fuera lo que agregan las esquinas.</translation>
    </message>
    <message>
        <source>Soil for one part of sand: %1 in the bill, %2 in the mixes.</source>
        <translation>Tierra por una parte de arena: %1 en la lista, %2 en las mezclas.</translation>
    </message>
    <message>
        <source>Which two to trust is for the people on site to settle, by measuring a finished coat and counting the bags that went into it.</source>
        <translation>En cuáles dos confiar lo decide la gente de la obra, midiendo una capa terminada y contando las bolsas que llevó.</translation>
    </message>
    <message>
        <source>Cement</source>
        <translation>Cemento</translation>
    </message>
    <message>
        <source>Makes plaster</source>
        <translation>Repello que da</translation>
    </message>
    <message>
        <source>Covers at this thickness</source>
        <translation>Cubre con este espesor</translation>
    </message>
    <message>
        <source>Batches for the whole coat</source>
        <translation>Tandas para toda la capa</translation>
    </message>
    <message>
        <source>Coat %1: %2 thick on %3</source>
        <translation>Capa %1: %2 de espesor en %3</translation>
    </message>
    <message>
        <source>%1 soil : %2 sand : %3 cement, by loose volume</source>
        <translation>%1 de tierra : %2 de arena : %3 de cemento, en volumen suelto</translation>
    </message>
    <message>
        <source>soil</source>
        <translation>tierra</translation>
    </message>
    <message>
        <source>sand</source>
        <translation>arena</translation>
    </message>
    <message>
        <source>cement</source>
        <translation>cemento</translation>
    </message>
    <message>
        <source>For one batch</source>
        <translation>Para una tanda</translation>
    </message>
    <message>
        <source>1 bag of cement</source>
        <translation>1 bolsa de cemento</translation>
    </message>
    <message>
        <source>half a bag</source>
        <translation>media bolsa</translation>
    </message>
    <message>
        <source>Measure loose, level with the rim. Mix dry until one colour, then add clean water little by little.</source>
        <translation>Mida suelto, al ras del recipiente. Mezcle en seco hasta que quede de un solo color; luego agregue agua limpia poco a poco.</translation>
    </message>
    <message>
        <source>Tick a box for each one-bag batch:</source>
        <translation>Marque una casilla por cada tanda de una bolsa:</translation>
    </message>
    <message>
        <source>Tick a box for every %1 one-bag batches:</source>
        <translation>Marque una casilla por cada %1 tandas de una bolsa:</translation>
    </message>
    <message>
        <source>The tank at a glance</source>
        <translation>El tanque de un vistazo</translation>
    </message>
    <message>
        <source>Materials</source>
        <translation>Materiales</translation>
    </message>
    <message>
        <source>Customary bill beside the computed one</source>
        <translation>Lista acostumbrada junto a la calculada</translation>
    </message>
    <message>
        <source>Mix cards</source>
        <translation>Tarjetas de mezcla</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Planta</translation>
    </message>
    <message>
        <source>Section A-A</source>
        <translation>Corte A-A</translation>
    </message>
    <message>
        <source>Foot of the wall and depth rod</source>
        <translation>Pie de la pared y vara de profundidad</translation>
    </message>
    <message>
        <source>Setting out</source>
        <translation>Replanteo</translation>
    </message>
    <message>
        <source>Work calendar</source>
        <translation>Calendario de trabajo</translation>
    </message>
    <message>
        <source>Wetting calendar</source>
        <translation>Calendario de mojado</translation>
    </message>
    <message>
        <source>Dip-stick</source>
        <translation>Vara para medir el agua</translation>
    </message>
    <message>
        <source>Working and living safely</source>
        <translation>Trabajar y vivir con seguridad</translation>
    </message>
    <message>
        <source>Findings and their sources</source>
        <translation>Observaciones y sus fuentes</translation>
    </message>
    <message>
        <source>Water at</source>
        <translation>Agua a</translation>
    </message>
    <message>
        <source>holds</source>
        <translation>contiene</translation>
    </message>
    <message>
        <source>Digging</source>
        <translation>Cavar</translation>
    </message>
    <message>
        <source>Pit walls fall in without warning. Stop and get out when you see cracks along the edge, bulging, or water in the wall.</source>
        <translation>Las paredes de la excavación se derrumban sin aviso. Pare y salga cuando vea grietas a lo largo de la orilla, abombamiento o agua en la pared.</translation>
    </message>
    <message>
        <source>Keep spoil, stones, bags and animals at least %1 back from the edge.</source>
        <translation>Mantenga la tierra sacada, las piedras, las bolsas y los animales al menos a %1 de la orilla.</translation>
    </message>
    <message>
        <source>Keep a ladder in the pit at all times. No one digs alone; someone stays at the top.</source>
        <translation>Tenga siempre una escalera dentro de la excavación. Nadie cava solo; alguien se queda arriba.</translation>
    </message>
    <message>
        <source>Never dig under a wall, and never stand in a narrow cut deeper than your waist without support.</source>
        <translation>Nunca cave debajo de una pared, y nunca se meta en una zanja angosta más honda que su cintura sin entibado.</translation>
    </message>
    <message>
        <source>Bags and stones: two people, backs straight, paths clear and dry.</source>
        <translation>Bolsas y piedras: dos personas, espalda recta, caminos despejados y secos.</translation>
    </message>
    <message>
        <source>Wet cement burns skin and eyes. Wear gloves, boots and long sleeves; wash splashes off at once with much clean water.</source>
        <translation>El cemento mojado quema la piel y los ojos. Use guantes, botas y manga larga; lave enseguida las salpicaduras con mucha agua limpia.</translation>
    </message>
    <message>
        <source>Cement dust harms the lungs. Open bags with the wind behind you, cover nose and mouth.</source>
        <translation>El polvo de cemento daña los pulmones. Abra las bolsas con el viento a su espalda; cúbrase nariz y boca.</translation>
    </message>
    <message>
        <source>No bare feet in the mix. Children stay away.</source>
        <translation>Nada de pies descalzos en la mezcla. Los niños, lejos.</translation>
    </message>
    <message>
        <source>The finished tank</source>
        <translation>El tanque terminado</translation>
    </message>
    <message>
        <source>A child can drown in it, and no one can climb out of smooth sloping walls. Fence all four sides, with a gate that shuts.</source>
        <translation>Un niño puede ahogarse en él, y nadie puede salir trepando por paredes lisas inclinadas. Cerque los cuatro lados, con una puerta que cierre.</translation>
    </message>
    <message>
        <source>Fix a ladder or a knotted rope that reaches the floor, and keep a float beside it.</source>
        <translation>Fije una escalera o una soga con nudos que llegue al piso, y tenga un flotador al lado.</translation>
    </message>
    <message>
        <source>An empty tank is a pit: keep the fence shut while it is dry, and never go in alone.</source>
        <translation>Un tanque vacío es un hoyo: mantenga cerrada la cerca mientras esté seco, y nunca entre solo.</translation>
    </message>
    <message>
        <source>The water is for fields and animals. It is not drinking water.</source>
        <translation>El agua es para los cultivos y los animales. No es agua para beber.</translation>
    </message>
    <message>
        <source>Local codes and licensed practice come first. On a slope, on filled ground, near a house or a drop, or where ground water is high, ask a licensed engineer before digging.</source>
        <translation>Las normas locales y el ejercicio profesional autorizado van primero. En ladera, en terreno de relleno, cerca de una casa o de un barranco, o donde el agua subterránea está alta, consulte a un ingeniero autorizado antes de cavar.</translation>
    </message>
    <message>
        <source>Stand a marked stick upright on the finished floor, read where it is wet, and look up what the tank holds.</source>
        <translation>Pare una vara marcada a plomo sobre el piso terminado, lea hasta dónde está mojada y busque cuánto contiene el tanque.</translation>
    </message>
    <message>
        <source>Full to the overflow at %1: %2.</source>
        <translation>Lleno hasta el rebosadero, a %1: %2.</translation>
    </message>
    <message>
        <source>Below %1 no water can be drawn; %2 stay in the tank.</source>
        <translation>Por debajo de %1 no se puede sacar agua; quedan %2 en el tanque.</translation>
    </message>
    <message>
        <source>What a practitioner should look at before building. A finding is not a verdict; what is not known never counts as safe.</source>
        <translation>Lo que un profesional debe mirar antes de construir. Una observación no es un veredicto; lo que no se sabe nunca cuenta como seguro.</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Fuente: %1</translation>
    </message>
    <message>
        <source>How much does the tap or spring give? Catch all of its water in a vessel of known size and take the time until it is full.</source>
        <translation>¿Cuánta agua da la llave o el manantial? Reciba toda su agua en un recipiente de tamaño conocido y mida el tiempo hasta que se llene.</translation>
    </message>
    <message>
        <source>Take a vessel that needs %1 or longer to fill; a larger one where it fills sooner.</source>
        <translation>Tome un recipiente que tarde %1 o más en llenarse; uno más grande si se llena antes.</translation>
    </message>
    <message>
        <source>Fill it, read the seconds, empty it, and do it again: more than %1 readings each time you come. One line for each reading.</source>
        <translation>Llénelo, lea los segundos, vacíelo y repita: más de %1 mediciones cada vez que venga. Una línea por cada medición.</translation>
    </message>
    <message>
        <source>Where it fills quickly, fill it several times running: a stroke in the tally for each time, and the seconds for all of them together.</source>
        <translation>Si se llena rápido, llénelo varias veces seguidas: una raya por cada vez, y los segundos de todas juntas.</translation>
    </message>
    <message>
        <source>Come back in every month, above all in the driest. The flow of the dry months decides.</source>
        <translation>Vuelva todos los meses, sobre todo en el más seco. El caudal de los meses secos es el que decide.</translation>
    </message>
    <message>
        <source>Litres in a minute: litres of the vessel × strokes × %1 ÷ seconds.</source>
        <translation>Litros por minuto: litros del recipiente × rayas × %1 ÷ segundos.</translation>
    </message>
    <message>
        <source>Tap or spring:</source>
        <translation>Llave o manantial:</translation>
    </message>
    <message>
        <source>Measured by:</source>
        <translation>Medido por:</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Vessel, litres</source>
        <translation>Litros del recipiente</translation>
    </message>
    <message>
        <source>Seconds</source>
        <translation>Segundos</translation>
    </message>
    <message>
        <source>Times filled, tally</source>
        <translation>Veces que se llenó, rayas</translation>
    </message>
    <message>
        <source>Remarks: weather, hours it runs</source>
        <translation>Notas: clima, horas que corre</translation>
    </message>
    <message>
        <source>Water through the year</source>
        <translation>El agua durante el año</translation>
    </message>
    <message>
        <source>Flow log</source>
        <translation>Registro del caudal</translation>
    </message>
    <message>
        <source>Supply and need</source>
        <translation>Entradas y necesidades</translation>
    </message>
    <message>
        <source>Tank size and beds</source>
        <translation>Tamaño del tanque y camas</translation>
    </message>
    <message>
        <source>Figures of the water balance</source>
        <translation>Cifras del balance de agua</translation>
    </message>
    <message>
        <source>Flow,
%1</source>
        <translation>Caudal,
%1</translation>
    </message>
    <message>
        <source>Hours a day</source>
        <translation>Horas al día</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Mes</translation>
    </message>
    <message>
        <source>Tap or spring</source>
        <translation>Llave o manantial</translation>
    </message>
    <message>
        <source>Readings with bucket and watch:</source>
        <translation>Mediciones con balde y reloj:</translation>
    </message>
    <message>
        <source>Rain</source>
        <translation>Lluvia</translation>
    </message>
    <message>
        <source>Wet days</source>
        <translation>Días con lluvia</translation>
    </message>
    <message>
        <source>Lowest</source>
        <translation>Mínima</translation>
    </message>
    <message>
        <source>Highest</source>
        <translation>Máxima</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>Viento</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>Sol</translation>
    </message>
    <message>
        <source>Weather, means of many years</source>
        <translation>Clima, promedios de muchos años</translation>
    </message>
    <message>
        <source>Left out because of gaps, years that begin in: %1.</source>
        <translation>Dejados fuera por tener vacíos, los años que empiezan en: %1.</translation>
    </message>
    <message>
        <source>Values put in for gaps: %1.</source>
        <translation>Valores puestos en los vacíos: %1.</translation>
    </message>
    <message>
        <source>%1 of daily weather are made from the monthly means, by a chain of wet and dry days with gamma amounts, %2. The draw starts with the number %3: the same number gives the same weather.</source>
        <translation>%1 de clima diario se generan de los promedios mensuales, con una cadena de días con lluvia y sin lluvia y cantidades según la distribución gamma, %2. El sorteo empieza con el número %3: el mismo número da el mismo clima.</translation>
    </message>
    <message>
        <source>Weather years</source>
        <translation>Años de clima</translation>
    </message>
    <message>
        <source>Rain in a mean year: %1; spread from year to year (standard deviation over mean): %2.</source>
        <translation>Lluvia en un año promedio: %1; variación de un año a otro (desviación estándar entre promedio): %2.</translation>
    </message>
    <message>
        <source>Reference evapotranspiration ET0 in a mean year: Penman-Monteith %1 %2, Hargreaves %3 %4. Reckoned with: %5.</source>
        <translation>Evapotranspiración de referencia ET0 en un año promedio: Penman-Monteith %1 %2, Hargreaves %3 %4. Se calcula con: %5.</translation>
    </message>
    <message>
        <source>Water at the end of a day = water at its start + tap or spring + runoff led in + rain on the tank − evaporation − seepage − drawn.</source>
        <translation>Agua al final del día = agua al comienzo + llave o manantial + escorrentía que llega + lluvia sobre el tanque − evaporación − filtración − agua sacada.</translation>
    </message>
    <message>
        <source>It is never less than none and never more than full: what is more runs over. No water is drawn from below the outlet. Evaporation is ET0 × the factor of open water × the water&apos;s surface; seepage goes through the wetted plaster. A bed needs what its crop uses and rain does not bring, over the share that reaches the roots, %1.</source>
        <translation>Nunca es menos que vacío ni más que lleno: lo que sobra rebosa. No se saca agua por debajo de la salida. La evaporación es ET0 × el factor de agua libre × la superficie del agua; la filtración pasa por el repello mojado. Una cama necesita lo que usa su cultivo y la lluvia no trae, entre la parte que llega a las raíces, %1.</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>not known, %1 taken</source>
        <translation>no se sabe, se toma %1</translation>
    </message>
    <message>
        <source>entered</source>
        <translation>anotado</translation>
    </message>
    <message>
        <source>Where the figures come from</source>
        <translation>De dónde vienen las cifras</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>N.º</translation>
    </message>
    <message>
        <source>Source, and how well it is founded</source>
        <translation>Fuente, y qué tan firme es</translation>
    </message>
    <message>
        <source>What was entered</source>
        <translation>Lo que se anotó</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valor</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente</translation>
    </message>
    <message>
        <source>What is usual, to hold the figures against</source>
        <translation>Lo que es usual, para comparar las cifras</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Cifra</translation>
    </message>
    <message>
        <source>Low</source>
        <translation>Baja</translation>
    </message>
    <message>
        <source>Typical</source>
        <translation>Típica</translation>
    </message>
    <message>
        <source>High</source>
        <translation>Alta</translation>
    </message>
    <message>
        <source>Beds</source>
        <translation>Camas de cultivo</translation>
    </message>
    <message>
        <source>Net need: what the crop uses and rain does not bring. Drawn: net need over the share that reaches the roots (%1).</source>
        <translation>Riego neto: lo que usa el cultivo y la lluvia no trae. Se saca: el riego neto entre la parte que llega a las raíces (%1).</translation>
    </message>
    <message>
        <source>Crop, season</source>
        <translation>Cultivo, temporada</translation>
    </message>
    <message>
        <source>Watered by, reaches the roots</source>
        <translation>Forma de riego, llega a las raíces</translation>
    </message>
    <message>
        <source>Area</source>
        <translation>Área</translation>
    </message>
    <message>
        <source>Crop use, net need</source>
        <translation>Uso del cultivo, riego neto</translation>
    </message>
    <message>
        <source>Drawn in a year</source>
        <translation>Se saca al año</translation>
    </message>
    <message>
        <source>Peak in a day</source>
        <translation>Máximo en un día</translation>
    </message>
    <message>
        <source>Crops</source>
        <translation>Cultivos</translation>
    </message>
    <message>
        <source>Kc: use of the crop over ET0. p: share of the water in the root zone that may be used before the crop suffers. Sources: %1; Kc for this climate, daily use and root zone: %2, eq. 62, 65, 66 and 82 to 85.</source>
        <translation>Kc: uso del cultivo entre ET0. p: parte del agua en la zona de raíces que se puede usar antes de que el cultivo sufra. Fuentes: %1; Kc para este clima, uso diario y zona de raíces: %2, ec. 62, 65, 66 y 82 a 85.</translation>
    </message>
    <message>
        <source>Crop</source>
        <translation>Cultivo</translation>
    </message>
    <message>
        <source>Kc: first, mid, end</source>
        <translation>Kc: inicial, medio, final</translation>
    </message>
    <message>
        <source>Kc for this climate</source>
        <translation>Kc para este clima</translation>
    </message>
    <message>
        <source>Stages, days</source>
        <translation>Etapas, días</translation>
    </message>
    <message>
        <source>Height, roots</source>
        <translation>Altura, raíces</translation>
    </message>
    <message>
        <source>p</source>
        <translation>p</translation>
    </message>
    <message>
        <source>Animals</source>
        <translation>Animales</translation>
    </message>
    <message>
        <source>Animal</source>
        <translation>Animal</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Cuántos</translation>
    </message>
    <message>
        <source>Each drinks</source>
        <translation>Bebe cada uno</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>menos de %1</translation>
    </message>
    <message>
        <source>Month by month</source>
        <translation>Mes por mes</translation>
    </message>
    <message>
        <source>Means of all years reckoned: good years bring more than this, bad years less. Read the stick on the first of each month and write it down; tick the months in which the water lasted.</source>
        <translation>Promedios de todos los años calculados: los años buenos traen más que esto, los malos menos. Lea la vara el primer día de cada mes y anótelo; marque los meses en que alcanzó el agua.</translation>
    </message>
    <message>
        <source>Needed each day</source>
        <translation>Se necesita por día</translation>
    </message>
    <message>
        <source>Read on the stick</source>
        <translation>Lectura en la vara</translation>
    </message>
    <message>
        <source>Lasted</source>
        <translation>Alcanzó</translation>
    </message>
    <message>
        <source>a year</source>
        <translation>al año</translation>
    </message>
    <message>
        <source>Comes in</source>
        <translation>Entra</translation>
    </message>
    <message>
        <source>Runoff of the roof</source>
        <translation>Escorrentía del techo</translation>
    </message>
    <message>
        <source>Runoff of the ground</source>
        <translation>Escorrentía del terreno</translation>
    </message>
    <message>
        <source>Rain on the tank</source>
        <translation>Lluvia sobre el tanque</translation>
    </message>
    <message>
        <source>Together</source>
        <translation>En total</translation>
    </message>
    <message>
        <source>Goes out</source>
        <translation>Sale</translation>
    </message>
    <message>
        <source>Evaporation</source>
        <translation>Evaporación</translation>
    </message>
    <message>
        <source>Seepage</source>
        <translation>Filtración</translation>
    </message>
    <message>
        <source>Runs over</source>
        <translation>Rebosa</translation>
    </message>
    <message>
        <source>Drawn</source>
        <translation>Se saca</translation>
    </message>
    <message>
        <source>Is needed for</source>
        <translation>Se necesita para</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personas</translation>
    </message>
    <message>
        <source>Of this</source>
        <translation>De eso</translation>
    </message>
    <message>
        <source>Missing</source>
        <translation>Falta</translation>
    </message>
    <message>
        <source>Means of %1. What comes in equals what goes out within %2.</source>
        <translation>Promedios de %1. Lo que entra es igual a lo que sale, con una diferencia máxima de %2.</translation>
    </message>
    <message>
        <source>Means of %1. The tank ends a mean year with %2 more than it began with; with this counted, what comes in equals what goes out within %3.</source>
        <translation>Promedios de %1. El tanque termina un año promedio con %2 más que al comienzo; contando eso, lo que entra es igual a lo que sale, con una diferencia máxima de %3.</translation>
    </message>
    <message>
        <source>Means of %1. The tank ends a mean year with %2 less than it began with; with this counted, what comes in equals what goes out within %3.</source>
        <translation>Promedios de %1. El tanque termina un año promedio con %2 menos que al comienzo; contando eso, lo que entra es igual a lo que sale, con una diferencia máxima de %3.</translation>
    </message>
    <message>
        <source>almost any</source>
        <translation>casi cualquiera</translation>
    </message>
    <message>
        <source>none up to %1</source>
        <translation>ninguno hasta %1</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>%1 or more</source>
        <translation>%1 o más</translation>
    </message>
    <message>
        <source>Years in ten with water all year: wanted</source>
        <translation>Años de cada diez con agua todo el año: deseados</translation>
    </message>
    <message>
        <source>Years in ten with water all year: as planned</source>
        <translation>Años de cada diez con agua todo el año: según el plan</translation>
    </message>
    <message>
        <source>This tank holds when full</source>
        <translation>Cabida de este tanque lleno</translation>
    </message>
    <message>
        <source>Smallest tank for the years wanted, same depth</source>
        <translation>Tanque mínimo para los años deseados, misma profundidad</translation>
    </message>
    <message>
        <source>Beds as entered</source>
        <translation>Camas de cultivo anotadas</translation>
    </message>
    <message>
        <source>Largest beds for the years wanted, this tank</source>
        <translation>Camas máximas para los años deseados, con este tanque</translation>
    </message>
    <message>
        <source>Question</source>
        <translation>Pregunta</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Respuesta</translation>
    </message>
    <message>
        <source>Find the size of a tank at the foot of the first picture and the area of beds at its left: where they meet it says in how many years of ten the water lasts.</source>
        <translation>Busque el tamaño de un tanque al pie del primer dibujo y el área de las camas a su izquierda: donde se juntan dice en cuántos años de cada diez alcanza el agua.</translation>
    </message>
    <message>
        <source>A finding says stop; overridden by %1, licence %2, on %3: %4.</source>
        <translation>Una observación dice alto; autorizado pese a ella por %1, licencia %2, el %3: %4.</translation>
    </message>
    <message>
        <source>Comes in, in the month</source>
        <translation>Entra en el mes</translation>
    </message>
    <message>
        <source>Days short of water</source>
        <translation>Días con falta de agua</translation>
    </message>
    <message>
        <source>%1, class %2</source>
        <translation>%1, clase %2</translation>
    </message>
    <message>
        <source>Tank full</source>
        <translation>Tanque lleno</translation>
    </message>
    <message>
        <source>Nearly empty</source>
        <translation>Casi vacío</translation>
    </message>
    <message>
        <source>Flow, end wide open</source>
        <translation>Caudal, extremo abierto del todo</translation>
    </message>
    <message>
        <source>By Hazen-Williams, to check</source>
        <translation>Según Hazen-Williams, para comprobar</translation>
    </message>
    <message>
        <source>Velocity</source>
        <translation>Velocidad</translation>
    </message>
    <message>
        <source>Head that drives the flow</source>
        <translation>Carga que mueve el agua</translation>
    </message>
    <message>
        <source>Lost by friction</source>
        <translation>Perdida por fricción</translation>
    </message>
    <message>
        <source>Lost in bends and valves</source>
        <translation>Perdida en codos y válvulas</translation>
    </message>
    <message>
        <source>Leaves as velocity</source>
        <translation>Sale como velocidad</translation>
    </message>
    <message>
        <source>Water over its end</source>
        <translation>Agua sobre su extremo</translation>
    </message>
    <message>
        <source>Pressure, end shut</source>
        <translation>Presión, extremo cerrado</translation>
    </message>
    <message>
        <source>Left of the pressure class</source>
        <translation>Lo que sobra de la clase de presión</translation>
    </message>
    <message>
        <source>bore measured</source>
        <translation>diámetro interior medido</translation>
    </message>
    <message>
        <source>at %1, %2 over the way before it</source>
        <translation>a %1, %2 sobre el tramo anterior</translation>
    </message>
    <message>
        <source>Pipe: %1; bore %2, length %3.</source>
        <translation>Tubería: %1; diámetro interior %2, largo %3.</translation>
    </message>
    <message>
        <source>High points: %1.</source>
        <translation>Puntos altos: %1.</translation>
    </message>
    <message>
        <source>Friction by Darcy-Weisbach and Colebrook-White: %1
Cross-check: %2</source>
        <translation>Fricción según Darcy-Weisbach y Colebrook-White: %1
Comprobación: %2</translation>
    </message>
    <message>
        <source>As it flows</source>
        <translation>Cómo corre</translation>
    </message>
    <message>
        <source>From the source to the tank</source>
        <translation>De la fuente al tanque</translation>
    </message>
    <message>
        <source>Top over the water</source>
        <translation>Parte alta sobre el agua</translation>
    </message>
    <message>
        <source>Most that it may be, at rest</source>
        <translation>Lo más que puede ser, en reposo</translation>
    </message>
    <message>
        <source>Left of it with the valve open</source>
        <translation>Lo que sobra de eso con la válvula abierta</translation>
    </message>
    <message>
        <source>Pressure at the top, as head</source>
        <translation>Presión en la parte alta, como carga</translation>
    </message>
    <message>
        <source>Speed that clears air</source>
        <translation>Velocidad que arrastra el aire</translation>
    </message>
    <message>
        <source>Most flow the top allows</source>
        <translation>Caudal máximo que permite la parte alta</translation>
    </message>
    <message>
        <source>Water that fills it</source>
        <translation>Agua que lo llena</translation>
    </message>
    <message>
        <source>The siphon</source>
        <translation>El sifón</translation>
    </message>
    <message>
        <source>Speed that clears air: %1</source>
        <translation>Velocidad que arrastra el aire: %1</translation>
    </message>
    <message>
        <source>Head left at them</source>
        <translation>Carga que queda en ellas</translation>
    </message>
    <message>
        <source>Head wanted</source>
        <translation>Carga que se quiere</translation>
    </message>
    <message>
        <source>Outlet, %1; open at a time: %2</source>
        <translation>Salida, %1; abiertas a la vez: %2</translation>
    </message>
    <message>
        <source>Drawing the tank down, end wide open</source>
        <translation>Vaciado del tanque, extremo abierto del todo</translation>
    </message>
    <message>
        <source>From the tank to the field</source>
        <translation>Del tanque al campo</translation>
    </message>
    <message>
        <source>Cohesion c</source>
        <translation>Cohesión c</translation>
    </message>
    <message>
        <source>Friction φ</source>
        <translation>Fricción φ</translation>
    </message>
    <message>
        <source>Unit weight γ</source>
        <translation>Peso unitario γ</translation>
    </message>
    <message>
        <source>Height of a vertical cut</source>
        <translation>Altura de un corte a plomo</translation>
    </message>
    <message>
        <source>This face, Culmann, just stands</source>
        <translation>Esta cara, Culmann, apenas se tiene en pie</translation>
    </message>
    <message>
        <source>This face, Culmann, factor %1</source>
        <translation>Esta cara, Culmann, factor %1</translation>
    </message>
    <message>
        <source>Stability number c / (γ H)</source>
        <translation>Número de estabilidad c / (γ H)</translation>
    </message>
    <message>
        <source>This face by that number</source>
        <translation>Esta cara según ese número</translation>
    </message>
    <message>
        <source>Factor of this cut by it</source>
        <translation>Factor de este corte según él</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1: %2 %3</translation>
    </message>
    <message>
        <source>Vertical cut</source>
        <translation>Corte a plomo</translation>
    </message>
    <message>
        <source>Culmann, plane slip through the toe, face β</source>
        <translation>Culmann, deslizamiento plano por el pie, cara β</translation>
    </message>
    <message>
        <source>Stability number, circles through the toe</source>
        <translation>Número de estabilidad, círculos por el pie</translation>
    </message>
    <message>
        <source>A factor F is put on cohesion and friction alike: c / F and tan φ / F. No water in the face, no crack, nothing standing on its edge.</source>
        <translation>Un factor F se aplica por igual a la cohesión y a la fricción: c / F y tan φ / F. Sin agua en la cara, sin grieta, sin nada puesto en su orilla.</translation>
    </message>
    <message>
        <source>Cut: the wall of the pit</source>
        <translation>Corte: la pared de la excavación</translation>
    </message>
    <message>
        <source>Face at %1 from the level, pit %2 deep, factor wanted %3.</source>
        <translation>Cara a %1 de la horizontal, excavación de %2 de hondo, factor que se quiere %3.</translation>
    </message>
    <message>
        <source>The soil is not known, so no height is reckoned.</source>
        <translation>No se conoce el suelo, así que no se calcula ninguna altura.</translation>
    </message>
    <message>
        <source>Strength of the soil %1</source>
        <translation>Resistencia del suelo %1</translation>
    </message>
    <message>
        <source>–: friction alone holds the face, or it lies outside the table of stability numbers. Judge by the low strengths.</source>
        <translation>–: la fricción sola sostiene la cara, o esta queda fuera de la tabla de números de estabilidad. Juzgue por las resistencias bajas.</translation>
    </message>
    <message>
        <source>Tank empty</source>
        <translation>Tanque vacío</translation>
    </message>
    <message>
        <source>Tank full and leaking</source>
        <translation>Tanque lleno y con fuga</translation>
    </message>
    <message>
        <source>lower without one</source>
        <translation>menor sin grieta</translation>
    </message>
    <message>
        <source>%1 deep, dry</source>
        <translation>%1 de hondo, seca</translation>
    </message>
    <message>
        <source>%1 deep, %2 full of water</source>
        <translation>%1 de hondo, %2 llena de agua</translation>
    </message>
    <message>
        <source>Lowest factor of safety; wanted</source>
        <translation>Factor de seguridad más bajo; el que se quiere</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>Centre of the circle x, z</source>
        <translation>Centro del círculo x, z</translation>
    </message>
    <message>
        <source>Radius</source>
        <translation>Radio</translation>
    </message>
    <message>
        <source>Ends of the slip x, x</source>
        <translation>Extremos del deslizamiento x, x</translation>
    </message>
    <message>
        <source>Crack</source>
        <translation>Grieta</translation>
    </message>
    <message>
        <source>Circles tried; without a factor</source>
        <translation>Círculos probados; sin factor</translation>
    </message>
    <message>
        <source>Slices; of them in pull</source>
        <translation>Dovelas; de ellas en tracción</translation>
    </message>
    <message>
        <source>Slices in pull: the method asks the soil there to pull, which it cannot. Where there are many, look at the circle before trusting its factor.</source>
        <translation>Dovelas en tracción: allí el método pide al suelo que resista tracción, y no puede. Si son muchas, mire el círculo antes de confiar en su factor.</translation>
    </message>
    <message>
        <source>A slip ends at the end of the section: a longer one may have a lower factor.</source>
        <translation>Un deslizamiento acaba en el extremo del corte: uno más largo puede tener un factor más bajo.</translation>
    </message>
    <message>
        <source>Slip circle</source>
        <translation>Círculo de deslizamiento</translation>
    </message>
    <message>
        <source>Not reckoned: the soil is not known.</source>
        <translation>No calculado: no se conoce el suelo.</translation>
    </message>
    <message>
        <source>Not reckoned: the ground is level and no terrace edge is entered, so there is nothing to slip.</source>
        <translation>No calculado: el terreno es llano y no hay filo de terraza anotado, así que no hay nada que se deslice.</translation>
    </message>
    <message>
        <source>Downhill side: slip circles</source>
        <translation>Lado de abajo: círculos de deslizamiento</translation>
    </message>
    <message>
        <source>Section: the finished ground down the fall, dropping at the terrace edge.</source>
        <translation>Corte: el terreno terminado ladera abajo, con la caída en el filo de la terraza.</translation>
    </message>
    <message>
        <source>Section: the finished ground down the fall.</source>
        <translation>Corte: el terreno terminado ladera abajo.</translation>
    </message>
    <message>
        <source>Bishop&apos;s simplified method</source>
        <translation>Método simplificado de Bishop</translation>
    </message>
    <message>
        <source>b width, W weight and α base slope of a slice, u water pressure on its base; P thrust of water in a crack, e its depth below the centre, R the radius. x runs downhill from the middle of the tank, z up from its finished floor.</source>
        <translation>b ancho, W peso y α inclinación de la base de una dovela, u presión del agua en su base; P empuje del agua en una grieta, e su profundidad bajo el centro, R el radio. x va ladera abajo desde el centro del tanque, z hacia arriba desde su piso terminado.</translation>
    </message>
    <message>
        <source>The circles were not searched for when this page was made; there is no factor yet.</source>
        <translation>Cuando se hizo esta página no se habían buscado los círculos; todavía no hay factor.</translation>
    </message>
    <message>
        <source>What is taken for granted</source>
        <translation>Lo que se da por supuesto</translation>
    </message>
    <message>
        <source>Strengths come from tables by the name of the soil, not from tests %1.</source>
        <translation>Las resistencias vienen de tablas según el nombre del suelo, no de ensayos %1.</translation>
    </message>
    <message>
        <source>Low strengths are taken for the slips: cohesion %1, friction %2, unit weight %3.</source>
        <translation>Para los deslizamientos se toman resistencias bajas: cohesión %1, fricción %2, peso unitario %3.</translation>
    </message>
    <message>
        <source>Plane strain: the slip is as wide as the slope. No earthquake.</source>
        <translation>Deformación plana: el deslizamiento es tan ancho como la ladera. Sin terremoto.</translation>
    </message>
    <message>
        <source>The pit counts as still full of ground, which weighs more than water and lining. Nothing else stands on the ground: no house, wall, heap or animals.</source>
        <translation>La excavación cuenta como todavía llena de tierra, que pesa más que el agua y el revestimiento. Nada más está sobre el terreno: ni casa, ni muro, ni montón, ni animales.</translation>
    </message>
    <message>
        <source>The tank&apos;s hole has no strength: each state is searched with and without a crack as deep as the pit (no deeper than the ground falls away), and the lower factor counts. Behind a crack only slips that come out no higher than its foot are counted.</source>
        <translation>El hueco del tanque no tiene resistencia: cada estado se busca con y sin una grieta tan honda como la excavación (no más honda que lo que baja el terreno), y vale el factor más bajo. Detrás de una grieta solo cuentan los deslizamientos que no salen más arriba que su pie.</translation>
    </message>
    <message>
        <source>The terrace edge is taken to run out %1 for each 1 that it falls.</source>
        <translation>Se toma que el filo de la terraza avanza %1 por cada 1 que baja.</translation>
    </message>
    <message>
        <source>Slips shallower than %1, and those that begin more than %2 downhill from the middle of the tank, leave tank and walkway alone and are left out.</source>
        <translation>Los deslizamientos de menos hondo que %1, y los que empiezan a más de %2 ladera abajo del centro del tanque, no tocan ni el tanque ni el pasillo y se dejan fuera.</translation>
    </message>
    <message>
        <source>Checked by a licensed engineer</source>
        <translation>Revisado por un ingeniero autorizado</translation>
    </message>
    <message>
        <source>Checked by:</source>
        <translation>Revisado por:</translation>
    </message>
    <message>
        <source>Licence:</source>
        <translation>Licencia:</translation>
    </message>
    <message>
        <source>Date:</source>
        <translation>Fecha:</translation>
    </message>
    <message>
        <source>Signature:</source>
        <translation>Firma:</translation>
    </message>
    <message>
        <source>A calculation for a licensed engineer to check. It is not a promise that the ground stands.</source>
        <translation>Un cálculo para que lo revise un ingeniero autorizado. No es una promesa de que el terreno se tenga en pie.</translation>
    </message>
    <message>
        <source>level with the platform</source>
        <translation>a nivel con la plataforma</translation>
    </message>
    <message>
        <source>%1 above the platform</source>
        <translation>%1 sobre la plataforma</translation>
    </message>
    <message>
        <source>%1 below the platform</source>
        <translation>%1 bajo la plataforma</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>dig down %1</source>
        <translation>cavar %1</translation>
    </message>
    <message>
        <source>fill up %1</source>
        <translation>rellenar %1</translation>
    </message>
    <message>
        <source>%1: cut, %2 out</source>
        <translation>%1: corte, %2 hacia afuera</translation>
    </message>
    <message>
        <source>%1: fill, %2 out</source>
        <translation>%1: relleno, %2 hacia afuera</translation>
    </message>
    <message>
        <source>Pegs of the platform</source>
        <translation>Estacas de la plataforma</translation>
    </message>
    <message>
        <source>Ground there</source>
        <translation>Terreno allí</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Qué hacer</translation>
    </message>
    <message>
        <source>Where the face ends</source>
        <translation>Dónde termina la cara</translation>
    </message>
    <message>
        <source>(chosen)</source>
        <translation>(elegido)</translation>
    </message>
    <message>
        <source>At which level the platform can lie</source>
        <translation>A qué nivel puede quedar la plataforma</translation>
    </message>
    <message>
        <source>How the level is found</source>
        <translation>Cómo se halla el nivel</translation>
    </message>
    <message>
        <source>The platform lies</source>
        <translation>La plataforma queda</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Corte</translation>
    </message>
    <message>
        <source>Fill</source>
        <translation>Relleno</translation>
    </message>
    <message>
        <source>Ground over the pit</source>
        <translation>Terreno sobre la excavación</translation>
    </message>
    <message>
        <source>Ground over the pit: natural ground over floor and walls of the pit where it is least. Less than nothing means that part of the tank stands on fill.</source>
        <translation>Terreno sobre la excavación: terreno natural sobre el fondo y las paredes de la excavación, donde es menos. Menos que nada quiere decir que una parte del tanque se apoya en relleno.</translation>
    </message>
    <message>
        <source>Topsoil is kept apart: never under the fill, never in the plaster.</source>
        <translation>La tierra vegetal se guarda aparte: nunca bajo el relleno, nunca en el repello.</translation>
    </message>
    <message>
        <source>Cut steps into the ground under the fill, so that it cannot slide.</source>
        <translation>Corte gradas en el terreno bajo el relleno, para que no pueda deslizarse.</translation>
    </message>
    <message>
        <source>Fill in layers of about %1. Break clods, take out roots and straw; the ground should be damp enough to hold together when pressed in the fist.</source>
        <translation>Rellene en capas de unos %1. Rompa los terrones, saque raíces y paja; la tierra debe estar tan húmeda que se mantenga unida al apretarla en el puño.</translation>
    </message>
    <message>
        <source>Ram each layer until the rammer leaves hardly a mark, then bring the next. Begin at the foot and keep each layer level.</source>
        <translation>Apisone cada capa hasta que el pisón casi no deje marca; entonces eche la siguiente. Empiece por el pie y mantenga cada capa a nivel.</translation>
    </message>
    <message>
        <source>Never dump fill down the slope from above.</source>
        <translation>Nunca bote relleno ladera abajo desde arriba.</translation>
    </message>
    <message>
        <source>Steps, layers and ramming: %1.</source>
        <translation>Gradas, capas y apisonado: %1.</translation>
    </message>
    <message>
        <source>The toe of every heap stays %1 or more back from the pit edge (29 CFR 1926.651(j)(2)).</source>
        <translation>El pie de todo montón queda a %1 o más de la orilla de la excavación (29 CFR 1926.651(j)(2)).</translation>
    </message>
    <message>
        <source>Earth: how to work it</source>
        <translation>Tierra: cómo trabajarla</translation>
    </message>
    <message>
        <source>Does the tank lose water through its lining? The sun takes water too. A bucket that floats in the tank shows how much; what the tank loses more has leaked.</source>
        <translation>¿Pierde agua el tanque por su revestimiento? El sol también se lleva agua. Un balde que flota en el tanque muestra cuánta; lo que el tanque pierde de más se ha fugado.</translation>
    </message>
    <message>
        <source>Fill the tank to the overflow. A new tank stands full for some days first, for dry plaster drinks. Choose days without rain.</source>
        <translation>Llene el tanque hasta el rebosadero. Un tanque nuevo queda lleno antes algunos días, porque el repello seco bebe agua. Elija días sin lluvia.</translation>
    </message>
    <message>
        <source>Shut inlet and outlet. No one draws water until the test is over.</source>
        <translation>Cierre la entrada y la salida. Nadie saca agua hasta que termine la prueba.</translation>
    </message>
    <message>
        <source>Measure with a ruler, to the millimetre: in the tank from a mark on the rim down to the water, in the bucket from a mark on its edge down to the water.</source>
        <translation>Mida con una regla, al milímetro: en el tanque, desde una marca en el borde hacia abajo hasta el agua; en el balde, desde una marca en su orilla hacia abajo hasta el agua.</translation>
    </message>
    <message>
        <source>Measure both again at the same hour on the next day, and on two days more. Rain in between: begin again.</source>
        <translation>Mida otra vez los dos a la misma hora del día siguiente, y dos días más. Si llueve en medio, empiece de nuevo.</translation>
    </message>
    <message>
        <source>Leak = fall in the tank less fall in the bucket, in millimetres, for one day.</source>
        <translation>Fuga = bajada en el tanque menos bajada en el balde, en milímetros, en un día.</translation>
    </message>
    <message>
        <source>In this tank, full, one millimetre is %1.</source>
        <translation>En este tanque, lleno, un milímetro es %1.</translation>
    </message>
    <message>
        <source>Leak</source>
        <translation>Fuga</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>hasta %1</translation>
    </message>
    <message>
        <source>Tight. Nothing to do; test again each year.</source>
        <translation>No pierde. Nada que hacer; repita la prueba cada año.</translation>
    </message>
    <message>
        <source>more, up to %1</source>
        <translation>más, hasta %1</translation>
    </message>
    <message>
        <source>Watch: look for wet ground; test again in some weeks.</source>
        <translation>Vigile: busque terreno mojado; repita la prueba en algunas semanas.</translation>
    </message>
    <message>
        <source>Find the cracks and mend them; then test again.</source>
        <translation>Busque las grietas y repárelas; después repita la prueba.</translation>
    </message>
    <message>
        <source>more than %1</source>
        <translation>más de %1</translation>
    </message>
    <message>
        <source>Let no more water in, empty the tank and mend it.</source>
        <translation>No deje entrar más agua, vacíe el tanque y repárelo.</translation>
    </message>
    <message>
        <source>These limits: %1.</source>
        <translation>Estos límites: %1.</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Hora</translation>
    </message>
    <message>
        <source>Tank, mm</source>
        <translation>Tanque, mm</translation>
    </message>
    <message>
        <source>Bucket, mm</source>
        <translation>Balde, mm</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Firma</translation>
    </message>
    <message>
        <source>notch, %1 wide</source>
        <translation>muesca de %1 de ancho</translation>
    </message>
    <message>
        <source>pipe, %1 inside</source>
        <translation>tubo de %1 de diámetro interior</translation>
    </message>
    <message>
        <source>Roof led in</source>
        <translation>Techo que escurre al tanque</translation>
    </message>
    <message>
        <source>Ground led in</source>
        <translation>Terreno que escurre al tanque</translation>
    </message>
    <message>
        <source>The tank&apos;s own opening</source>
        <translation>Boca del tanque mismo</translation>
    </message>
    <message>
        <source>Storm</source>
        <translation>Aguacero</translation>
    </message>
    <message>
        <source>%1, planning value</source>
        <translation>%1, valor para planear</translation>
    </message>
    <message>
        <source>Rain that runs in</source>
        <translation>Lluvia que entra</translation>
    </message>
    <message>
        <source>From the source</source>
        <translation>De la fuente</translation>
    </message>
    <message>
        <source>What runs in</source>
        <translation>Lo que entra</translation>
    </message>
    <message>
        <source>Overflow</source>
        <translation>Rebosadero</translation>
    </message>
    <message>
        <source>Water over its sill</source>
        <translation>Agua sobre su umbral</translation>
    </message>
    <message>
        <source>Freeboard left in the storm</source>
        <translation>Borde libre que queda en el aguacero</translation>
    </message>
    <message>
        <source>Freeboard wanted</source>
        <translation>Borde libre que se quiere</translation>
    </message>
    <message>
        <source>Passes with water at the rim</source>
        <translation>Deja pasar con el agua al borde</translation>
    </message>
    <message>
        <source>Overflow free</source>
        <translation>Rebosadero libre</translation>
    </message>
    <message>
        <source>over the low part of the rim</source>
        <translation>sobre la parte baja del borde</translation>
    </message>
    <message>
        <source>over the rest of the rim</source>
        <translation>sobre el resto del borde</translation>
    </message>
    <message>
        <source>Overflow blocked</source>
        <translation>Rebosadero tapado</translation>
    </message>
    <message>
        <source>Deep</source>
        <translation>De hondo</translation>
    </message>
    <message>
        <source>Flow</source>
        <translation>Caudal</translation>
    </message>
    <message>
        <source>Bottom width and depth of the channel</source>
        <translation>Ancho del fondo y profundidad del canal</translation>
    </message>
    <message>
        <source>Fall</source>
        <translation>Pendiente</translation>
    </message>
    <message>
        <source>Water in it</source>
        <translation>Agua en él</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Velocidad</translation>
    </message>
    <message>
        <source>Spill channel</source>
        <translation>Canal de desagüe</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Ancho</translation>
    </message>
    <message>
        <source>Depth, all together</source>
        <translation>Profundidad, en total</translation>
    </message>
    <message>
        <source>Of it for water that settles</source>
        <translation>De eso, para que el agua se asiente</translation>
    </message>
    <message>
        <source>Of it for mud</source>
        <translation>De eso, para el lodo</translation>
    </message>
    <message>
        <source>The grain sinks</source>
        <translation>El grano se hunde</translation>
    </message>
    <message>
        <source>%1 a second</source>
        <translation>%1 por segundo</translation>
    </message>
    <message>
        <source>Water may run through at most at</source>
        <translation>El agua puede pasar a lo más a</translation>
    </message>
    <message>
        <source>Silt trap</source>
        <translation>Desarenador</translation>
    </message>
    <message>
        <source>Smallest grain that must stay behind</source>
        <translation>Grano más pequeño que debe quedar atrás</translation>
    </message>
    <message>
        <source>%1, source and storm</source>
        <translation>%1, fuente y aguacero</translation>
    </message>
    <message>
        <source>Clean it out every</source>
        <translation>Limpiarlo cada</translation>
    </message>
    <message>
        <source>For the grain named</source>
        <translation>Para el grano indicado</translation>
    </message>
    <message>
        <source>Area, speed and mud: %1</source>
        <translation>Área, velocidad y lodo: %1</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>cumple</translation>
    </message>
    <message>
        <source>not kept</source>
        <translation>no cumple</translation>
    </message>
    <message>
        <source>Leak test</source>
        <translation>Prueba de fuga</translation>
    </message>
    <message>
        <source>Tank falls</source>
        <translation>Baja el tanque</translation>
    </message>
    <message>
        <source>Bucket falls: evaporation</source>
        <translation>Baja el balde: evaporación</translation>
    </message>
    <message>
        <source>Error of the readings, either way</source>
        <translation>Error de las mediciones, en más o en menos</translation>
    </message>
    <message>
        <source>Water lost</source>
        <translation>Agua perdida</translation>
    </message>
    <message>
        <source>Share of the water a day</source>
        <translation>Parte del agua por día</translation>
    </message>
    <message>
        <source>Published marks for concrete tanks</source>
        <translation>Límites publicados para tanques de concreto</translation>
    </message>
    <message>
        <source>Allows</source>
        <translation>Permite</translation>
    </message>
    <message>
        <source>This tank</source>
        <translation>Este tanque</translation>
    </message>
    <message>
        <source>Ground and platform</source>
        <translation>Terreno y plataforma</translation>
    </message>
    <message>
        <source>Pipes and siphon</source>
        <translation>Tuberías y sifón</translation>
    </message>
    <message>
        <source>Overflow, silt trap and leak test</source>
        <translation>Rebosadero, desarenador y prueba de fuga</translation>
    </message>
    <message>
        <source>Engineer&apos;s calculation: cut and downhill side</source>
        <translation>Cálculo para el ingeniero: corte y lado de abajo</translation>
    </message>
    <message>
        <source>Thresholds of site and safety</source>
        <translation>Límites de lugar y seguridad</translation>
    </message>
    <message>
        <source>From these numbers findings about site and safety are raised. A practitioner should question those that no published source stands behind.</source>
        <translation>Con estos números se hacen las observaciones sobre lugar y seguridad. Un profesional debe poner en duda los que no tienen detrás ninguna fuente publicada.</translation>
    </message>
    <message>
        <source>Fill counts as loose fill: cohesion %1, friction %2, unit weight %3.</source>
        <translation>El relleno cuenta como relleno suelto: cohesión %1, fricción %2, peso unitario %3.</translation>
    </message>
    <message>
        <source>With the tank empty the ground is dry down to the ground water entered. With the tank full and leaking, water stands in the ground as drawn: level with the tank&apos;s water to the pit edge, from there straight to where the ground lies as low as the pit floor.</source>
        <translation>Con el tanque vacío el terreno está seco hasta el agua subterránea anotada. Con el tanque lleno y perdiendo, el agua está en el terreno como se dibuja: a nivel con el agua del tanque hasta la orilla de la excavación, y de ahí en línea recta hasta donde el terreno baja al nivel del fondo de la excavación.</translation>
    </message>
    <message>
        <source>Set a light bucket afloat, tied so that it stands clear of the walls. Fill it with water until only a hand&apos;s breadth of it stays dry, so that it floats upright and deep.</source>
        <translation>Ponga a flotar una cubeta liviana, amarrada para que no toque las paredes. Llénela de agua hasta que solo quede seco el ancho de una mano, para que flote derecha y honda.</translation>
    </message>
    <message>
        <source>The trap as it is holds back grains from</source>
        <translation>El desarenador como está retiene granos desde</translation>
    </message>
    <message>
        <source>Mud is brought by</source>
        <translation>El lodo lo trae</translation>
    </message>
    <message>
        <source>the source, and one hour of the storm</source>
        <translation>la fuente, y una hora del aguacero</translation>
    </message>
    <message>
        <source>A peg P is a corner of the platform. Heights are told from the finished platform, which the rim of the tank is level with. A peg Q stands straight out from the corner of its number, where the face of the cut or the fill meets the ground.</source>
        <translation>Una estaca P es una esquina de la plataforma. Las alturas se dicen desde la plataforma terminada, que está a nivel con el borde del tanque. Una estaca Q está derecho hacia afuera de la esquina de su número, donde la cara del corte o del relleno encuentra el terreno.</translation>
    </message>
    <message>
        <source>Materials together</source>
        <translation>Materiales, en total</translation>
    </message>
    <message>
        <source>Wages together</source>
        <translation>Pago de jornales, en total</translation>
    </message>
    <message>
        <source>Other things together</source>
        <translation>Otras cosas, en total</translation>
    </message>
    <message>
        <source>For what</source>
        <translation>Para qué</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Cuánto</translation>
    </message>
    <message>
        <source>Price of one</source>
        <translation>Precio por unidad</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Monto</translation>
    </message>
    <message>
        <source>Given</source>
        <translation>Aporte</translation>
    </message>
    <message>
        <source>Cash</source>
        <translation>Efectivo</translation>
    </message>
    <message>
        <source>%1; split each piece into %2</source>
        <translation>%1; partir cada pieza en %2</translation>
    </message>
    <message>
        <source>Carrying it to the place</source>
        <translation>Acarreo hasta el lugar</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Lo lleva</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>Loads</source>
        <translation>Cargas</translation>
    </message>
    <message>
        <source>Days of one carrier</source>
        <translation>Días si lleva uno solo</translation>
    </message>
    <message>
        <source>Wages</source>
        <translation>Pago de jornales</translation>
    </message>
    <message>
        <source>Other things</source>
        <translation>Otras cosas</translation>
    </message>
    <message>
        <source>Carrying</source>
        <translation>Acarreo</translation>
    </message>
    <message>
        <source>Put aside for what is not foreseen, %1</source>
        <translation>Reserva para imprevistos, %1</translation>
    </message>
    <message>
        <source>All together</source>
        <translation>En total</translation>
    </message>
    <message>
        <source>Of it given in work and kind</source>
        <translation>De eso, aportado en trabajo y en especie</translation>
    </message>
    <message>
        <source>Of it in cash</source>
        <translation>De eso, en efectivo</translation>
    </message>
    <message>
        <source>Agreed</source>
        <translation>De acuerdo</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Por</translation>
    </message>
    <message>
        <source>Name and date</source>
        <translation>Nombre y fecha</translation>
    </message>
    <message>
        <source>or thumb</source>
        <translation>o huella</translation>
    </message>
    <message>
        <source>the household or group</source>
        <translation>la familia o el grupo</translation>
    </message>
    <message>
        <source>masons and labourers</source>
        <translation>albañiles y peones</translation>
    </message>
    <message>
        <source>who pays a share</source>
        <translation>quien paga una parte</translation>
    </message>
    <message>
        <source>a witness</source>
        <translation>un testigo</translation>
    </message>
    <message>
        <source>%1, after a quarter of the day</source>
        <translation>%1, pasado un cuarto del día</translation>
    </message>
    <message>
        <source>%1, for the last quarter of the day</source>
        <translation>%1, en el último cuarto del día</translation>
    </message>
    <message>
        <source>%1, at midday</source>
        <translation>%1, al mediodía</translation>
    </message>
    <message>
        <source>%1 for wetting</source>
        <translation>%1 para mojar</translation>
    </message>
    <message>
        <source>%1, masons among them: %2</source>
        <translation>%1, albañiles entre ellas: %2</translation>
    </message>
    <message>
        <source>%1, rest days too</source>
        <translation>%1, también los días de descanso</translation>
    </message>
    <message>
        <source>no room to slip</source>
        <translation>sin holgura</translation>
    </message>
    <message>
        <source>may slip %1</source>
        <translation>puede atrasarse %1</translation>
    </message>
    <message>
        <source>Solid bar: work. Hatched bar: keep wet, rest days too. Open bar: the tank fills or is watched. Triangle alone: last day.</source>
        <translation>Barra llena: trabajo. Barra rayada: mantener mojado, también los días de descanso. Barra vacía: el tanque se llena o se vigila. Triángulo solo: último día.</translation>
    </message>
    <message>
        <source>Arrow at the right: later than these bars reach.</source>
        <translation>Flecha a la derecha: más tarde de lo que alcanzan estas barras.</translation>
    </message>
    <message>
        <source>No room to slip: when this is late, the end is late.</source>
        <translation>Sin holgura: si esto se atrasa, se atrasa el final.</translation>
    </message>
    <message>
        <source>%1 a day</source>
        <translation>%1 al día</translation>
    </message>
    <message>
        <source>%1, what the source gives</source>
        <translation>%1, lo que da la fuente</translation>
    </message>
    <message>
        <source>%1, as entered</source>
        <translation>%1, según lo anotado</translation>
    </message>
    <message>
        <source>Filling starts</source>
        <translation>Empieza el llenado</translation>
    </message>
    <message>
        <source>It must start no later than</source>
        <translation>Debe empezar a más tardar el</translation>
    </message>
    <message>
        <source>The tank is full on</source>
        <translation>El tanque queda lleno el</translation>
    </message>
    <message>
        <source>not within a year</source>
        <translation>tarda más de un año</translation>
    </message>
    <message>
        <source>Flows in on the first day</source>
        <translation>Entra el primer día</translation>
    </message>
    <message>
        <source>The water may rise in a day by at most</source>
        <translation>El agua puede subir en un día, como máximo</translation>
    </message>
    <message>
        <source>Water for sacks after the last curing day</source>
        <translation>Agua para los costales después del último día de curado</translation>
    </message>
    <message>
        <source>Water to bring by hand, to cover all walls in time</source>
        <translation>Agua que hay que traer a mano para cubrir a tiempo todas las paredes</translation>
    </message>
    <message>
        <source>Filling</source>
        <translation>Llenado</translation>
    </message>
    <message>
        <source>Walls that stay under wet sacks until the water covers them</source>
        <translation>Paredes que siguen bajo costales mojados hasta que el agua las cubra</translation>
    </message>
    <message>
        <source>Height above the finished floor</source>
        <translation>Altura sobre el piso terminado</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>Pared</translation>
    </message>
    <message>
        <source>Keep wet until</source>
        <translation>Mantener mojada hasta el</translation>
    </message>
    <message>
        <source>Wet for</source>
        <translation>Mojada durante</translation>
    </message>
    <message>
        <source>The water rises, first by days, then by weeks</source>
        <translation>Cómo sube el agua, primero por días, luego por semanas</translation>
    </message>
    <message>
        <source>The water rises day by day</source>
        <translation>Cómo sube el agua día por día</translation>
    </message>
    <message>
        <source>Level: above the finished floor, in the evening of the day, or of the week&apos;s last day. Write beside it what the rod shows.</source>
        <translation>Nivel: sobre el piso terminado, al anochecer del día o del último día de la semana. Anote al lado lo que marca la vara.</translation>
    </message>
    <message>
        <source>Day or week</source>
        <translation>Día o semana</translation>
    </message>
    <message>
        <source>Runs in</source>
        <translation>Entra</translation>
    </message>
    <message>
        <source>To wet sacks</source>
        <translation>Para mojar costales</translation>
    </message>
    <message>
        <source>Level measured</source>
        <translation>Nivel medido</translation>
    </message>
    <message>
        <source>No one enters the tank while it fills. The fence stands, ladder and rope hang inside.</source>
        <translation>Nadie entra al tanque mientras se llena. La cerca está puesta; la escalera y la soga cuelgan adentro.</translation>
    </message>
    <message>
        <source>Filling begun on:</source>
        <translation>Llenado empezado el:</translation>
    </message>
    <message>
        <source>Full on:</source>
        <translation>Lleno el:</translation>
    </message>
    <message>
        <source>Hour %1</source>
        <translation>Hora %1</translation>
    </message>
    <message>
        <source>Place the coat in one go, within %1: %2 people needed, %3 planned; masons among them: %4 needed, %5 planned.</source>
        <translation>Coloque la capa de una sola vez, en %1 como máximo: personas necesarias %2, previstas %3; albañiles entre ellas: necesarios %4, previstos %5.</translation>
    </message>
    <message>
        <source>Price of the lining</source>
        <translation>Precio del revestimiento</translation>
    </message>
    <message>
        <source>Digging and platform</source>
        <translation>Excavación y plataforma</translation>
    </message>
    <message>
        <source>Capital</source>
        <translation>Capital</translation>
    </message>
    <message>
        <source>Life</source>
        <translation>Duración</translation>
    </message>
    <message>
        <source>Factor</source>
        <translation>Factor</translation>
    </message>
    <message>
        <source>Upkeep a year</source>
        <translation>Mantenimiento al año</translation>
    </message>
    <message>
        <source>Cost a year</source>
        <translation>Costo anual equivalente</translation>
    </message>
    <message>
        <source>Cost a year for each m³ held</source>
        <translation>Costo anual equivalente por cada m³ de cabida</translation>
    </message>
    <message>
        <source>Lining</source>
        <translation>Revestimiento</translation>
    </message>
    <message>
        <source>Linings by what they cost a year</source>
        <translation>Revestimientos según su costo anual equivalente</translation>
    </message>
    <message>
        <source>Cost a year = capital × factor + upkeep; factor = i (1 + i)^n / ((1 + i)^n − 1), with i interest a year (%1 %2) and n life in years %3.</source>
        <translation>Costo anual equivalente = capital × factor + mantenimiento; factor = i (1 + i)^n / ((1 + i)^n − 1), con i interés al año (%1 %2) y n duración en años %3.</translation>
    </message>
    <message>
        <source>Cost of a cubic metre</source>
        <translation>Costo de un metro cúbico</translation>
    </message>
    <message>
        <source>Each m³ held = the whole bill ÷ water when full: %1 ÷ %2 = %3.</source>
        <translation>Cada m³ de cabida = todo el presupuesto ÷ agua con el tanque lleno: %1 ÷ %2 = %3.</translation>
    </message>
    <message>
        <source>Dry months, with rain below half of the reference evapotranspiration %1: %2.</source>
        <translation>Meses secos, con lluvia por debajo de la mitad de la evapotranspiración de referencia %1: %2.</translation>
    </message>
    <message>
        <source>What a m³ delivered costs is not reckoned: whether the water lasts is not asked.</source>
        <translation>No se calcula lo que cuesta un m³ entregado: no se ha preguntado si el agua alcanza.</translation>
    </message>
    <message>
        <source>Cash needed, first by days, then by weeks</source>
        <translation>Efectivo necesario, primero por días, luego por semanas</translation>
    </message>
    <message>
        <source>Goods and carrying</source>
        <translation>Compras y acarreo</translation>
    </message>
    <message>
        <source>Together so far</source>
        <translation>Total hasta aquí</translation>
    </message>
    <message>
        <source>enough</source>
        <translation>suficientes</translation>
    </message>
    <message>
        <source>TOO FEW</source>
        <translation>FALTAN</translation>
    </message>
    <message>
        <source>People on the coat</source>
        <translation>Personas en la capa</translation>
    </message>
    <message>
        <source>Masons among them</source>
        <translation>Albañiles entre ellas</translation>
    </message>
    <message>
        <source>Batches an hour</source>
        <translation>Tandas por hora</translation>
    </message>
    <message>
        <source>Mixing places</source>
        <translation>Lugares de mezcla</translation>
    </message>
    <message>
        <source>In one go</source>
        <translation>De una sola vez</translation>
    </message>
    <message>
        <source>Needed</source>
        <translation>Se necesitan</translation>
    </message>
    <message>
        <source>There</source>
        <translation>Hay</translation>
    </message>
    <message>
        <source>in time</source>
        <translation>a tiempo</translation>
    </message>
    <message>
        <source>TOO LATE</source>
        <translation>TARDE</translation>
    </message>
    <message>
        <source>Putting on a batch</source>
        <translation>Colocar una tanda</translation>
    </message>
    <message>
        <source>takes</source>
        <translation>tarda</translation>
    </message>
    <message>
        <source>may take</source>
        <translation>puede tardar</translation>
    </message>
    <message>
        <source>with a whole bag</source>
        <translation>con una bolsa entera</translation>
    </message>
    <message>
        <source>with half a bag</source>
        <translation>con media bolsa</translation>
    </message>
    <message>
        <source>Ready beside the pit before the first batch</source>
        <translation>Listo junto a la excavación antes de la primera tanda</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>Bags of cement</source>
        <translation>Bolsas de cemento</translation>
    </message>
    <message>
        <source>Water for mixing</source>
        <translation>Agua para mezclar</translation>
    </message>
    <message>
        <source>Sacks to cover the coat</source>
        <translation>Costales para cubrir la capa</translation>
    </message>
    <message>
        <source>Batches with a whole bag: %1. Tick a box for each; by the end of an hour its row must be full.</source>
        <translation>Tandas de una bolsa entera: %1. Marque una casilla por cada una; al terminar cada hora su fila debe estar llena.</translation>
    </message>
    <message>
        <source>Batches with a whole bag: %1. Tick a box for every %2; by the end of an hour its row must be full.</source>
        <translation>Tandas de una bolsa entera: %1. Marque una casilla por cada %2 tandas; al terminar cada hora su fila debe estar llena.</translation>
    </message>
    <message>
        <source>Coat %1, within %2: %3 of work</source>
        <translation>Capa %1, en %2 como máximo: %3 de trabajo</translation>
    </message>
    <message>
        <source>A coat that is begun is finished the same day: plaster put beside plaster that has set does not hold water.</source>
        <translation>Capa que se empieza se termina el mismo día: el repello puesto junto a otro ya fraguado no retiene el agua.</translation>
    </message>
    <message>
        <source>Option %1 cannot be built: %2</source>
        <translation>La opción %1 no se puede construir: %2</translation>
    </message>
    <message>
        <source>What comes of it</source>
        <translation>Qué resulta</translation>
    </message>
    <message>
        <source>Lines that are the same in all options are left out.</source>
        <translation>No se muestran las líneas que son iguales en todas las opciones.</translation>
    </message>
    <message>
        <source>Each coat in one go</source>
        <translation>Cada capa de una sola vez</translation>
    </message>
    <message>
        <source>First filling</source>
        <translation>Primer llenado</translation>
    </message>
    <message>
        <source>Bill and shares</source>
        <translation>Presupuesto y aportes</translation>
    </message>
    <message>
        <source>Works: tasks, people and weather</source>
        <translation>Obra: tareas, personas y clima</translation>
    </message>
    <message>
        <source>Money: linings and ranges</source>
        <translation>Dinero: revestimientos y rangos</translation>
    </message>
    <message>
        <source>Options side by side</source>
        <translation>Opciones lado a lado</translation>
    </message>
    <message>
        <source>As entered</source>
        <translation>Con lo anotado</translation>
    </message>
    <message>
        <source>P10</source>
        <translation>P10</translation>
    </message>
    <message>
        <source>P50</source>
        <translation>P50</translation>
    </message>
    <message>
        <source>P90</source>
        <translation>P90</translation>
    </message>
    <message>
        <source>Input</source>
        <translation>Dato</translation>
    </message>
    <message>
        <source>What drives the spread</source>
        <translation>De dónde viene la variación</translation>
    </message>
    <message>
        <source>Low and high: how far an input may lie from what is entered. Then its share of the spread; +: more of the input makes more, −: more of it makes less.</source>
        <translation>Baja y alta: cuánto puede apartarse un dato de lo anotado. Después, su parte de la variación; +: si el dato sube, el resultado sube; −: si el dato sube, el resultado baja.</translation>
    </message>
    <message>
        <source>How sure the numbers are</source>
        <translation>Qué tan seguros son los números</translation>
    </message>
    <message>
        <source>The ranges were not drawn when this page was made.</source>
        <translation>Cuando se hizo esta página no se habían sorteado los rangos.</translation>
    </message>
    <message>
        <source>%1 draws; each input triangular between low and high about what is entered. 1 draw in 10 is below P10, half are below P50, 9 in 10 below P90. The draws start with the number %2: the same number gives the same answer.</source>
        <translation>%1 sorteos; cada dato se reparte en triángulo entre su valor bajo y su valor alto, alrededor de lo anotado. 1 de cada 10 sorteos queda por debajo de P10, la mitad por debajo de P50, 9 de cada 10 por debajo de P90. Los sorteos empiezan con el número %2: el mismo número da la misma respuesta.</translation>
    </message>
    <message>
        <source>Week from</source>
        <translation>Semana desde</translation>
    </message>
    <message>
        <source>Good</source>
        <translation>Bien</translation>
    </message>
    <message>
        <source>Frost</source>
        <translation>Helada</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Calor</translation>
    </message>
    <message>
        <source>How fast fresh plaster dries is not reckoned: humidity or wind is not known.</source>
        <translation>No se calcula qué tan rápido se seca el repello fresco: no se conoce la humedad o el viento.</translation>
    </message>
    <message>
        <source>km/h</source>
        <translation>km/h</translation>
    </message>
    <message>
        <source>How fast fresh plaster dries</source>
        <translation>Qué tan rápido se seca el repello fresco</translation>
    </message>
    <message>
        <source>Coat</source>
        <translation>Capa</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Aire</translation>
    </message>
    <message>
        <source>E water lost in kg for each m² and hour, Tc and Ta plaster and air in °C, r humidity from 0 to 1, V wind in km/h; the mean weather of the week, plaster as warm as the air.</source>
        <translation>E agua perdida en kg por cada m² y hora, Tc y Ta repello y aire en °C, r humedad de 0 a 1, V viento en km/h; el clima promedio de la semana, con el repello tan caliente como el aire.</translation>
    </message>
    <message>
        <source>Weather window: how often coats stay undisturbed, week by week</source>
        <translation>Semanas buenas según el clima: cada cuánto quedan las capas sin contratiempos, semana por semana</translation>
    </message>
    <message>
        <source>Good: nothing disturbs, of all start days of the week and %1 of weather. Rain: %2 or more on the day of a coat or the day after. Frost: a night at or below 0 °C within 7 days of a coat. Heat: a day of a coat outside 5 to 35 °C. * week of the first coat as planned; + best week.</source>
        <translation>Bien: capas sin contratiempos, de todos los días de comienzo de la semana y %1 de clima. Lluvia: %2 o más el día de una capa o el día siguiente. Helada: una noche a 0 °C o menos dentro de los 7 días de una capa. Calor: un día de una capa fuera de 5 a 35 °C. * semana de la primera capa según el plan; + mejor semana.</translation>
    </message>
    <message>
        <source>wetted</source>
        <translation>mojado</translation>
    </message>
    <message>
        <source>all %1 times</source>
        <translation>las %1 veces</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>Water covers it on</source>
        <translation>El agua la cubre el</translation>
    </message>
    <message>
        <source>Covered</source>
        <translation>Cubierta</translation>
    </message>
    <message>
        <source>from %1 up</source>
        <translation>de %1 para arriba</translation>
    </message>
    <message>
        <source>Wet the walls</source>
        <translation>Mojar las paredes</translation>
    </message>
    <message>
        <source>Week</source>
        <translation>Semana</translation>
    </message>
    <message>
        <source>Water a day, at most</source>
        <translation>Agua al día, como máximo</translation>
    </message>
    <message>
        <source>Later weeks: a box for each day</source>
        <translation>Semanas siguientes: una casilla por cada día</translation>
    </message>
    <message>
        <source>While the tank fills: walls that the water has not reached</source>
        <translation>Mientras se llena el tanque: paredes a las que no ha llegado el agua</translation>
    </message>
    <message>
        <source>When the water covers the walls is not known, or takes more than a year. Sacks stay wet on every wall up to the overflow until water covers it.</source>
        <translation>No se sabe cuándo cubre el agua las paredes, o tarda más de un año. Los costales se mantienen mojados en todas las paredes hasta el nivel del rebosadero, mientras el agua no las cubra.</translation>
    </message>
    <message>
        <source>After the curing days</source>
        <translation>Después de los días de curado</translation>
    </message>
    <message>
        <source>Water: for all wetting on that day.</source>
        <translation>Agua: para todas las mojadas de ese día.</translation>
    </message>
    <message>
        <source>%1; not before %2, as wished</source>
        <translation>%1; no antes del %2, como se desea</translation>
    </message>
    <message>
        <source>NONE</source>
        <translation>NINGUNA</translation>
    </message>
    <message>
        <source>All tasks</source>
        <translation>Todas las tareas</translation>
    </message>
    <message>
        <source>Heavy type and NONE: no room to slip. Curing, filling and watching count all days, other tasks the days that are worked.</source>
        <translation>Letra negrita y NINGUNA: sin holgura. El curado, el llenado y la vigilancia cuentan todos los días; las demás tareas, los días de trabajo.</translation>
    </message>
    <message>
        <source>Starts</source>
        <translation>Empieza</translation>
    </message>
    <message>
        <source>Ends</source>
        <translation>Termina</translation>
    </message>
    <message>
        <source>starts after the end of: %1</source>
        <translation>empieza después del fin de: %1</translation>
    </message>
    <message>
        <source>starts after the start of: %1</source>
        <translation>empieza después del comienzo de: %1</translation>
    </message>
    <message>
        <source>ends after the end of: %1</source>
        <translation>termina después del fin de: %1</translation>
    </message>
    <message>
        <source>ends after the start of: %1</source>
        <translation>termina después del comienzo de: %1</translation>
    </message>
    <message>
        <source>What waits for what</source>
        <translation>Qué tarea espera a cuál</translation>
    </message>
    <message>
        <source>Its order</source>
        <translation>Su orden</translation>
    </message>
    <message>
        <source>People by day</source>
        <translation>Personas por día</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Días</translation>
    </message>
    <message>
        <source>Labourers</source>
        <translation>Peones</translation>
    </message>
    <message>
        <source>Masons</source>
        <translation>Albañiles</translation>
    </message>
    <message>
        <source>Wetting</source>
        <translation>Mojado</translation>
    </message>
    <message>
        <source>Dates: critical path method, forward and backward pass %1. Room: days that a task may slip before the last day moves.</source>
        <translation>Fechas: método de la ruta crítica, pasada hacia adelante y hacia atrás %1. Holgura: días que una tarea se puede atrasar sin que se mueva el último día.</translation>
    </message>
    <message>
        <source>Person-days of each task</source>
        <translation>Jornales de cada tarea</translation>
    </message>
    <message>
        <source>Used</source>
        <translation>Usada</translation>
    </message>
    <message>
        <source>Digging the pit by the published norm: %1; by what is told of earlier tanks: %2.</source>
        <translation>Cavar según la norma publicada: %1; según lo que se cuenta de tanques anteriores: %2.</translation>
    </message>
    <message>
        <source>Rates in force</source>
        <translation>Rendimientos que se usan</translation>
    </message>
    <message>
        <source>Measured on site</source>
        <translation>Medido en la obra</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>Registros</translation>
    </message>
    <message>
        <source>Least</source>
        <translation>Menor</translation>
    </message>
    <message>
        <source>Median</source>
        <translation>Mediana</translation>
    </message>
    <message>
        <source>Most</source>
        <translation>Mayor</translation>
    </message>
    <message>
        <source>Entered</source>
        <translation>Anotado</translation>
    </message>
    <message>
        <source>Not in these sums, for the price, the weight or how much is needed is not known: %1.</source>
        <translation>No está en estas sumas, porque no se conoce el precio, el peso o cuánto hace falta: %1.</translation>
    </message>
    <message>
        <source>%1 to watch</source>
        <translation>%1 para vigilar</translation>
    </message>
    <message>
        <source>Soil-cement without a price of its own: materials, their carriage and the work of stone bed, coats and curing, with %1 for what is not foreseen, as on digging and platform. Other prices are as entered.</source>
        <translation>Suelo-cemento sin precio propio: materiales, su acarreo y el trabajo de cama de piedra, capas y curado, con %1 de imprevistos, igual que la excavación y la plataforma. Los demás precios son los anotados.</translation>
    </message>
    <message>
        <source>Not reckoned while prices are missing.</source>
        <translation>No se calcula mientras falten precios.</translation>
    </message>
    <message>
        <source>Each m³ delivered = cost of the whole tank a year (the bill × the factor of soil-cement + its upkeep) ÷ water drawn in the dry months of a mean year: %1 ÷ %2 = %3.</source>
        <translation>Cada m³ entregado = costo anual de todo el tanque (el presupuesto × el factor del suelo-cemento + su mantenimiento) ÷ agua sacada en los meses secos de un año medio: %1 ÷ %2 = %3.</translation>
    </message>
    <message>
        <source>≠ and heavy type: not as in A</source>
        <translation>≠ y negrita: distinto de A</translation>
    </message>
    <message>
        <source>all of the coat</source>
        <translation>toda la capa</translation>
    </message>
    <message>
        <source>Until the next coat goes on</source>
        <translation>Hasta que se ponga la capa siguiente</translation>
    </message>
    <message>
        <source>Room, days</source>
        <translation>Holgura, días</translation>
    </message>
    <message>
        <source>starts %2 after the end of: %1</source>
        <translation>empieza %2 después del fin de: %1</translation>
    </message>
    <message>
        <source>starts %2 before the end of: %1</source>
        <translation>empieza %2 antes del fin de: %1</translation>
    </message>
    <message>
        <source>starts %2 after the start of: %1</source>
        <translation>empieza %2 después del inicio de: %1</translation>
    </message>
    <message>
        <source>starts %2 before the start of: %1</source>
        <translation>empieza %2 antes del inicio de: %1</translation>
    </message>
    <message>
        <source>ends %2 after the end of: %1</source>
        <translation>termina %2 después del fin de: %1</translation>
    </message>
    <message>
        <source>ends %2 before the end of: %1</source>
        <translation>termina %2 antes del fin de: %1</translation>
    </message>
    <message>
        <source>ends %2 after the start of: %1</source>
        <translation>termina %2 después del inicio de: %1</translation>
    </message>
    <message>
        <source>ends %2 before the start of: %1</source>
        <translation>termina %2 antes del inicio de: %1</translation>
    </message>
    <message>
        <source>%1 (rest days counted)</source>
        <translation>%1 (con días de descanso)</translation>
    </message>
    <message>
        <source>%1. From: %2. %3</source>
        <translation>%1. A partir de: %2. %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Every number of this plan: what it is, how it was reckoned, from which numbers, and where the figures come from. A number that is reckoned from others names them; each stands here in its own place.</source>
        <translation>Cada número de este plan: qué es, cómo se calculó, con qué números y de qué fuente vienen las cifras. Un número que se calcula con otros los nombra; cada uno está aquí en su propio lugar.</translation>
    </message>
    <message>
        <source>Cleaning, each year before the rains</source>
        <translation>Limpieza, cada año antes de las lluvias</translation>
    </message>
    <message>
        <source>Two people, never one alone in the tank, not even in an empty one. Ladder to the floor; get out when you feel dizzy.</source>
        <translation>Dos personas; nunca una sola dentro del tanque, ni siquiera vacío. Escalera hasta el piso; salga en cuanto sienta mareo.</translation>
    </message>
    <message>
        <source>Choose the weeks when the tank is nearly empty and the rains are near. Draw the last water for the beds.</source>
        <translation>Escoja las semanas en que el tanque está casi vacío y las lluvias están cerca. Saque la última agua para las camas.</translation>
    </message>
    <message>
        <source>Loosen the silt with a soft brush and a wooden scoop. No spade, no hoe, no wire brush: they cut the plaster.</source>
        <translation>Afloje el lodo con un cepillo suave y un cucharón de madera. Nada de pala, azadón ni cepillo de alambre: cortan el repello.</translation>
    </message>
    <message>
        <source>Lift the silt out in buckets, the bucket never over someone&apos;s head. Silt is good soil: spread it on the beds as manure.</source>
        <translation>Saque el lodo en baldes, nunca con el balde sobre la cabeza de alguien. El lodo es buena tierra: extiéndalo en las camas como abono.</translation>
    </message>
    <message>
        <source>Look for cracks on walls and floor while it is clean. Mark them with charcoal and mend them now.</source>
        <translation>Busque grietas en las paredes y el piso mientras está limpio. Márquelas con carbón y repárelas ahora.</translation>
    </message>
    <message>
        <source>Do not let the plaster dry out: it shrinks and cracks. Keep it wet and fill the tank again within days.</source>
        <translation>No deje que el repello se seque: se encoge y se agrieta. Manténgalo mojado y vuelva a llenar el tanque en pocos días.</translation>
    </message>
    <message>
        <source>Mortar, as for the last coat: %1 soil : %2 sand : %3 cement, by loose volume, mixed stiff.</source>
        <translation>Mortero, como para la última capa: %1 de tierra : %2 de arena : %3 de cemento, en volumen suelto, de mezcla tiesa.</translation>
    </message>
    <message>
        <source>Mending cracks</source>
        <translation>Reparar grietas</translation>
    </message>
    <message>
        <source>Hairline crack, thinner than a fingernail: brush it clean, wet it, and rub in cement stirred with water to a cream.</source>
        <translation>Grieta como un pelo, más delgada que una uña: cepíllela, mójela y frote adentro cemento batido con agua como crema.</translation>
    </message>
    <message>
        <source>Open crack: cut it out to a groove like a V, as deep as it is wide, until sound plaster shows. Brush out all dust and wet the groove well.</source>
        <translation>Grieta abierta: píquela en forma de V, tan honda como ancha, hasta encontrar repello sano. Saque todo el polvo con cepillo y moje bien el corte.</translation>
    </message>
    <message>
        <source>Rub cement cream into the wet groove, then press the mortar in hard, in two layers where it is deep, and float it level with the old face.</source>
        <translation>Frote crema de cemento en el corte mojado, luego apriete fuerte el mortero, en dos pasadas donde sea hondo, y empareje con la llana al ras de la cara vieja.</translation>
    </message>
    <message>
        <source>Wet sacks over the place for %1. Then fill, and make the leak test (sheet F6).</source>
        <translation>Costales mojados sobre el lugar durante %1. Después llene y haga la prueba de fuga (hoja F6).</translation>
    </message>
    <message>
        <source>A wall that bulges, leans or sinks, or a crack that opens again after mending: do not go in, let no more water in, and ask a licensed engineer. Mortar does not hold moving ground.</source>
        <translation>Pared abombada, inclinada o hundida, o grieta que se abre otra vez después de reparada: no entre, no deje entrar más agua y consulte a un ingeniero autorizado. El mortero no sujeta un terreno que se mueve.</translation>
    </message>
    <message>
        <source>Cleaned on</source>
        <translation>Limpiado el</translation>
    </message>
    <message>
        <source>By whom</source>
        <translation>Por quién</translation>
    </message>
    <message>
        <source>Silt, buckets</source>
        <translation>Lodo, baldes</translation>
    </message>
    <message>
        <source>Filled again on</source>
        <translation>Llenado otra vez el</translation>
    </message>
    <message>
        <source>How to clean and mend: %1.</source>
        <translation>Cómo limpiar y reparar: %1.</translation>
    </message>
    <message>
        <source>Mended on</source>
        <translation>Reparado el</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>Wet sacks until</source>
        <translation>Costales mojados hasta</translation>
    </message>
    <message>
        <source>%1, TOO FEW: %2 needed</source>
        <translation>%1, MUY POCOS: se necesitan %2</translation>
    </message>
    <message>
        <source>People planned on it</source>
        <translation>Personas previstas</translation>
    </message>
    <message>
        <source>Put on within</source>
        <translation>Colocar en</translation>
    </message>
    <message>
        <source>Sacks to cover it</source>
        <translation>Costales para cubrirla</translation>
    </message>
    <message>
        <source>Batches with a whole bag</source>
        <translation>Tandas con una bolsa entera</translation>
    </message>
    <message>
        <source>Days under wet sacks</source>
        <translation>Días bajo costales mojados</translation>
    </message>
    <message>
        <source>This coat</source>
        <translation>Esta capa</translation>
    </message>
    <message>
        <source>Wet the earth walls and the stone bed until they are dark but no water stands on them. Dry earth drinks the plaster&apos;s water.</source>
        <translation>Moje las paredes de tierra y el lecho de piedra hasta que estén oscuros, sin agua parada encima. La tierra seca se bebe el agua del repello.</translation>
    </message>
    <message>
        <source>The coat below is roughened and free of dust. Wet it until it is dark but no water stands on it.</source>
        <translation>La capa de abajo está rayada y sin polvo. Mójela hasta que esté oscura, sin agua parada encima.</translation>
    </message>
    <message>
        <source>Rub it even with the wooden float, then scratch it crosswise so that the next coat holds.</source>
        <translation>Emparéjela con la llana de madera y ráyela cruzado, para que agarre la capa siguiente.</translation>
    </message>
    <message>
        <source>Rub it smooth and dense with the float while it is still fresh; no cracks, no pits.</source>
        <translation>Alísela y apriétela con la llana mientras está fresca: sin grietas ni huecos.</translation>
    </message>
    <message>
        <source>Press walls and floor into one another where they meet: no joint.</source>
        <translation>Apriete pared y piso uno contra otro donde se juntan: sin junta.</translation>
    </message>
    <message>
        <source>Round off the corner of wall and floor with a radius of %1: no joint.</source>
        <translation>Redondee la esquina de pared y piso con un radio de %1: sin junta.</translation>
    </message>
    <message>
        <source>Begin early and finish in one go. Walls first, from the foot upward, all round, pressed on hard, %1 thick by a marked nail; then the floor, backing out to the ladder.</source>
        <translation>Empiece temprano y termine de una sola vez. Primero las paredes, desde el pie hacia arriba, todo alrededor, apretando fuerte, de %1 de espesor según un clavo marcado; después el piso, retrocediendo hacia la escalera.</translation>
    </message>
    <message>
        <source>Keep shade over the fresh coat. None is put on in rain, or when frost is to come.</source>
        <translation>Mantenga sombra sobre la capa fresca. No se coloca con lluvia ni cuando va a caer helada.</translation>
    </message>
    <message>
        <source>Wet sacks over all of it as soon as it takes no thumb print, within the hour in sun or wind. Keep them wet by the wetting calendar.</source>
        <translation>Costales mojados sobre toda la capa apenas ya no se marque el pulgar; con sol o viento, antes de una hora. Manténgalos mojados según el calendario de mojado.</translation>
    </message>
    <message>
        <source>The plan does not say yet which pipes go through the lining.</source>
        <translation>El plan todavía no dice qué tubos atraviesan el revestimiento.</translation>
    </message>
    <message>
        <source>Through the lining go the pipe to the field and the overflow pipe.</source>
        <translation>El tubo al campo y el tubo del rebosadero atraviesan el revestimiento.</translation>
    </message>
    <message>
        <source>Through the lining goes the pipe to the field.</source>
        <translation>El tubo al campo atraviesa el revestimiento.</translation>
    </message>
    <message>
        <source>Through the lining goes the overflow pipe.</source>
        <translation>El tubo del rebosadero atraviesa el revestimiento.</translation>
    </message>
    <message>
        <source>By this plan no pipe goes through the lining: pipes lie over the rim.</source>
        <translation>Según este plan ningún tubo atraviesa el revestimiento: los tubos van por encima del borde.</translation>
    </message>
    <message>
        <source>Pipes and collars, before coat 1</source>
        <translation>Tubos y collares, antes de la capa 1</translation>
    </message>
    <message>
        <source>Every pipe through the wall is laid before coat 1. Roughen it where the plaster will hold it; smooth plastic lets water along.</source>
        <translation>Todo tubo que atraviesa la pared se coloca antes de la capa 1. Ráspelo donde lo va a agarrar el repello; el plástico liso deja pasar agua a lo largo.</translation>
    </message>
    <message>
        <source>Bed it in rammed earth over its whole length, so that it cannot sink and break away.</source>
        <translation>Asiéntelo en tierra apisonada en todo su largo, para que no se hunda ni se rompa.</translation>
    </message>
    <message>
        <source>Set a collar of stiff plaster around it, a hand&apos;s breadth wide on every side, let into the earth wall. Coat 1 goes on while the collar is still damp.</source>
        <translation>Ponga alrededor un collar de repello tieso, de una mano de ancho por cada lado, metido en la pared de tierra. La capa 1 se coloca con el collar todavía húmedo.</translation>
    </message>
    <message>
        <source>Where it can be, take the pipe over the rim instead: a hole that is not made cannot leak.</source>
        <translation>Donde se pueda, pase el tubo por encima del borde: un hueco que no se hace no puede gotear.</translation>
    </message>
    <message>
        <source>Pipes through the wall and over the rim</source>
        <translation>Tubos a través de la pared y por encima del borde</translation>
    </message>
    <message>
        <source>The design in short form, to scan or to type into the program:</source>
        <translation>El diseño en forma corta, para escanearlo o escribirlo en el programa:</translation>
    </message>
    <message>
        <source>From %1 deep on a ladder stands in the pit, close to those who dig, until the last one is out.</source>
        <translation>Desde %1 de hondo hay una escalera dentro de la excavación, cerca de quienes cavan, hasta que salga el último.</translation>
    </message>
    <message>
        <source>Throw the spoil %1 or more back from the edge. No stones, tools, bags or animals nearer than that.</source>
        <translation>Tire la tierra sacada a %1 o más de la orilla. Más cerca, nada de piedras, herramientas, bolsas ni animales.</translation>
    </message>
    <message>
        <source>Fence the pit, by night and on rest days too. Children stay away.</source>
        <translation>Cerque la excavación, también de noche y en días de descanso. Que los niños no se acerquen.</translation>
    </message>
    <message>
        <source>Dig inside the strings. Leave the pegs where they stand: all sizes are measured from them.</source>
        <translation>Cave por dentro de los cordeles. Deje las estacas en su lugar: de ellas se miden todas las medidas.</translation>
    </message>
    <message>
        <source>Take the whole floor down evenly, no more than %1 at a time. Never dig under a wall.</source>
        <translation>Baje todo el fondo parejo, no más de %1 cada vez. Nunca cave por debajo de una pared.</translation>
    </message>
    <message>
        <source>After every such step hold the batter board against the walls and check sides and diagonals (sheet M5). Cut off what stands out; do not fill what was dug too far with loose earth.</source>
        <translation>Después de cada bajada ponga la plantilla del talud contra las paredes y revise lados y diagonales (hoja M5). Corte lo que sobresale; no rellene con tierra suelta lo que se cavó de más.</translation>
    </message>
    <message>
        <source>Watch walls and edge. Cracks along the edge, bulging, falling crumbs or water in the wall: everybody out at once, and ask before going on.</source>
        <translation>Vigile las paredes y la orilla. Grietas a lo largo de la orilla, abombamiento, terrones que caen o agua en la pared: todos afuera de inmediato, y consulte antes de seguir.</translation>
    </message>
    <message>
        <source>Stop in rain. Lead water away from the edge. Go in again only when the walls have been looked at all round.</source>
        <translation>Pare si llueve. Desvíe el agua lejos de la orilla. Vuelva a entrar solo cuando se hayan revisado las paredes todo alrededor.</translation>
    </message>
    <message>
        <source>Dig the last hand&apos;s breadth by scraping, to the rod&apos;s mark for the pit floor; then ram the floor.</source>
        <translation>La última mano de hondo se cava raspando, hasta la marca de la vara para el fondo de la excavación; después apisone el fondo.</translation>
    </message>
    <message>
        <source>This pit gets deeper than %1. Walls of that height bury people: ask a licensed engineer how far they must lean or be propped, and follow the local code.</source>
        <translation>Esta excavación pasa de %1 de hondo. Paredes de esa altura entierran a la gente: pregunte a un ingeniero autorizado cuánto talud deben tener o cómo entibarlas, y cumpla las normas locales.</translation>
    </message>
    <message>
        <source>Loose spoil left over</source>
        <translation>Tierra sacada suelta que sobra</translation>
    </message>
    <message>
        <source>Heap of it</source>
        <translation>Montón</translation>
    </message>
    <message>
        <source>%1 high, %2 across</source>
        <translation>%1 de alto, %2 de ancho</translation>
    </message>
    <message>
        <source>Pit at the ground</source>
        <translation>Excavación a ras de suelo</translation>
    </message>
    <message>
        <source>Pit at its floor</source>
        <translation>Excavación en su fondo</translation>
    </message>
    <message>
        <source>Pit depth, ground to pit floor</source>
        <translation>Profundidad de la excavación, del suelo al fondo</translation>
    </message>
    <message>
        <source>To dig for the pit, as it lies</source>
        <translation>Por cavar para la excavación, en banco</translation>
    </message>
    <message>
        <source>What is dug, before any lining</source>
        <translation>Lo que se cava, antes de todo revestimiento</translation>
    </message>
    <message>
        <source>The pit when it is dug</source>
        <translation>La excavación ya cavada</translation>
    </message>
    <message>
        <source>The board for the lean of the dug wall</source>
        <translation>La plantilla para el talud de la pared cavada</translation>
    </message>
    <message>
        <source>Sections: A-A on sheet M3, B-B on sheet M15.</source>
        <translation>Cortes: A-A en la hoja M3, B-B en la hoja M15.</translation>
    </message>
    <message>
        <source>B-B: sheet M15.</source>
        <translation>B-B: hoja M15.</translation>
    </message>
    <message>
        <source>Section B-B of the plan. A-A: sheet M3.</source>
        <translation>Corte B-B de la planta. A-A: hoja M3.</translation>
    </message>
    <message>
        <source>The rod, standing in the pit</source>
        <translation>La vara, parada en la excavación</translation>
    </message>
    <message>
        <source>Take soil from below the roots, dry and crush it, sieve out stones and straw.</source>
        <translation>Tome tierra de debajo de las raíces, séquela y desmenúcela; saque piedras y paja con la zaranda.</translation>
    </message>
    <message>
        <source>Fill a clear jar with straight sides to a third with the soil. Add a pinch of salt or washing powder, and water until two fingers of air are left.</source>
        <translation>Llene con la tierra un tercio de un frasco transparente de lados rectos. Eche una pizca de sal o de detergente, y agua hasta que queden dos dedos de aire.</translation>
    </message>
    <message>
        <source>Shut it, shake it hard for %1 minutes, set it down level and do not move it again.</source>
        <translation>Tápelo, agítelo fuerte %1 minutos, póngalo a nivel y no lo mueva más.</translation>
    </message>
    <message>
        <source>After %1 minute mark the top of the sand on the jar, after %2 hours the top of the silt. When the water is clear, after %3 to %4 hours, mark the top of the clay.</source>
        <translation>Después de %1 minuto marque en el frasco hasta dónde llega la arena; después de %2 horas, hasta dónde llega el limo. Cuando el agua esté clara, después de %3 a %4 horas, marque hasta dónde llega la arcilla.</translation>
    </message>
    <message>
        <source>Fold the sheet along the ruler&apos;s edge, stand it at the jar with its zero at the jar&apos;s floor inside, and read how thick each layer is.</source>
        <translation>Doble la hoja por el filo de la regla, párela junto al frasco con el cero a la altura del fondo por dentro, y lea el espesor de cada capa.</translation>
    </message>
    <message>
        <source>Jar</source>
        <translation>Frasco</translation>
    </message>
    <message>
        <source>Soil from where, how deep</source>
        <translation>Tierra de dónde, a qué hondo</translation>
    </message>
    <message>
        <source>Sand, mm</source>
        <translation>Arena, mm</translation>
    </message>
    <message>
        <source>Silt, mm</source>
        <translation>Limo, mm</translation>
    </message>
    <message>
        <source>Clay, mm</source>
        <translation>Arcilla, mm</translation>
    </message>
    <message>
        <source>All, mm</source>
        <translation>Todo, mm</translation>
    </message>
    <message>
        <source>Clay, %</source>
        <translation>Arcilla, %</translation>
    </message>
    <message>
        <source>How much clay is in the soil? In water sand sinks first, then silt, clay last.</source>
        <translation>¿Cuánta arcilla tiene la tierra? En el agua baja primero la arena, luego el limo y al final la arcilla.</translation>
    </message>
    <message>
        <source>Clay in the soil, in percent = clay ÷ all × %1.</source>
        <translation>Arcilla en la tierra, en porcentaje = arcilla ÷ todo × %1.</translation>
    </message>
    <message>
        <source>Read by:</source>
        <translation>Leyó:</translation>
    </message>
    <message>
        <source>Type the thickness of each layer in on the tab %1.</source>
        <translation>Escriba el espesor de cada capa en la pestaña %1.</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Apuntes</translation>
    </message>
    <message>
        <source>How the jar is done: %1. A laboratory measures it more exactly.</source>
        <translation>Cómo se hace con el frasco: %1. Un laboratorio lo mide con más exactitud.</translation>
    </message>
    <message>
        <source>or</source>
        <translation>o</translation>
    </message>
    <message>
        <source>For 1 bag of cement, and below it for half a bag (½): boxes of %1, or pans of %2, or buckets of %3, level with the rim.</source>
        <translation>Para 1 bolsa de cemento y, debajo, para media bolsa (½): cajones de %1, o bateas de %2, o baldes de %3, al ras.</translation>
    </message>
    <message>
        <source>Test pits</source>
        <translation>Calicatas</translation>
    </message>
    <message>
        <source>Soil by ball and ribbon</source>
        <translation>Suelo por bola y cinta</translation>
    </message>
    <message>
        <source>Jar test</source>
        <translation>Prueba del frasco</translation>
    </message>
    <message>
        <source>Slope by water level</source>
        <translation>Pendiente por nivel de agua</translation>
    </message>
    <message>
        <source>Section B-B</source>
        <translation>Corte B-B</translation>
    </message>
    <message>
        <source>Build stages</source>
        <translation>Etapas de la obra</translation>
    </message>
    <message>
        <source>Stone bed</source>
        <translation>Lecho de piedra</translation>
    </message>
    <message>
        <source>Coats and pipes</source>
        <translation>Capas y tubos</translation>
    </message>
    <message>
        <source>Use by month</source>
        <translation>Uso por mes</translation>
    </message>
    <message>
        <source>Cleaning and crack repair</source>
        <translation>Limpieza y reparación de grietas</translation>
    </message>
    <message>
        <source>Calculation sheet</source>
        <translation>Hoja de cálculos</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>Take a handful of soil without stones. Drip water on and knead it until it is like putty: no dry crumbs, no water running.</source>
        <translation>Tome un puñado de tierra sin piedras. Échele agua a gotas y amásela hasta que quede como masilla: sin terrones secos y sin que escurra agua.</translation>
    </message>
    <message>
        <source>Squeeze it in the fist. Does a ball hold together?</source>
        <translation>Apriétela en el puño. ¿Queda hecha una bola?</translation>
    </message>
    <message>
        <source>Push the ball with the thumb over the forefinger to a flat ribbon of even thickness, and let it hang until it breaks. Lay it on the strip below and read its length.</source>
        <translation>Empuje la bola con el pulgar sobre el índice hasta hacer una cinta plana de espesor parejo, y déjela colgar hasta que se rompa. Póngala en la tira de abajo y lea el largo.</translation>
    </message>
    <message>
        <source>Wet a pinch in the palm very much and rub it with a finger. Is it above all gritty, above all smooth, or neither? Then wash your hands.</source>
        <translation>Moje mucho una pizca en la palma y frótela con un dedo. ¿Es sobre todo áspera, sobre todo suave, o ninguna de las dos? Después lávese las manos.</translation>
    </message>
    <message>
        <source>loamy sand</source>
        <translation>arena franca</translation>
    </message>
    <message>
        <source>Ball and ribbon</source>
        <translation>Bola y cinta</translation>
    </message>
    <message>
        <source>Gritty</source>
        <translation>Áspera</translation>
    </message>
    <message>
        <source>Neither</source>
        <translation>Ninguna</translation>
    </message>
    <message>
        <source>Smooth</source>
        <translation>Suave</translation>
    </message>
    <message>
        <source>no ball holds</source>
        <translation>no se hace bola</translation>
    </message>
    <message>
        <source>ball, but no ribbon</source>
        <translation>bola, pero no cinta</translation>
    </message>
    <message>
        <source>ribbon shorter than %1</source>
        <translation>cinta de menos de %1</translation>
    </message>
    <message>
        <source>sandy loam</source>
        <translation>franco arenoso</translation>
    </message>
    <message>
        <source>loam</source>
        <translation>tierra franca</translation>
    </message>
    <message>
        <source>silt loam</source>
        <translation>franco limoso</translation>
    </message>
    <message>
        <source>sandy clay loam</source>
        <translation>franco arcillo-arenoso</translation>
    </message>
    <message>
        <source>clay loam</source>
        <translation>franco arcilloso</translation>
    </message>
    <message>
        <source>silty clay loam</source>
        <translation>franco arcillo-limoso</translation>
    </message>
    <message>
        <source>%1 or longer</source>
        <translation>%1 o más larga</translation>
    </message>
    <message>
        <source>sandy clay</source>
        <translation>arcilla arenosa</translation>
    </message>
    <message>
        <source>clay</source>
        <translation>arcilla</translation>
    </message>
    <message>
        <source>silty clay</source>
        <translation>arcilla limosa</translation>
    </message>
    <message>
        <source>Soil from where</source>
        <translation>Tierra de dónde</translation>
    </message>
    <message>
        <source>Ball</source>
        <translation>Bola</translation>
    </message>
    <message>
        <source>Ribbon, mm</source>
        <translation>Cinta, mm</translation>
    </message>
    <message>
        <source>It is</source>
        <translation>Es</translation>
    </message>
    <message>
        <source>What soil is it? Hands can tell, with a little water.</source>
        <translation>¿Qué suelo es? Las manos lo dicen, con un poco de agua.</translation>
    </message>
    <message>
        <source>Type the readings in on the tab %1.</source>
        <translation>Escriba lo leído en la pestaña %1.</translation>
    </message>
    <message>
        <source>Two people who look where they step. Never walk backward toward the edge of a terrace or a pit.</source>
        <translation>Dos personas que miren dónde pisan. Nunca camine hacia atrás en dirección al filo de una terraza ni a la orilla de una excavación.</translation>
    </message>
    <message>
        <source>Take a clear hose of %1 to %2 m and two sticks with marks every centimetre. Fill the hose until no bubble is left in it, and tie an end to each stick.</source>
        <translation>Tome una manguera transparente de %1 a %2 m y dos varas con una marca en cada centímetro. Llene la manguera hasta que no quede ninguna burbuja y amarre una punta a cada vara.</translation>
    </message>
    <message>
        <source>One stick stands uphill, one straight downhill, both upright on the ground. Both ends of the hose are open.</source>
        <translation>Una vara va cuesta arriba y la otra en línea recta cuesta abajo, las dos a plomo sobre el suelo. Las dos puntas de la manguera quedan abiertas.</translation>
    </message>
    <message>
        <source>Wait until the water stands still: it is equally high at both ends. Read it on both sticks, from the ground up.</source>
        <translation>Espere a que el agua se quede quieta: está a la misma altura en las dos puntas. Léala en las dos varas, desde el suelo hacia arriba.</translation>
    </message>
    <message>
        <source>Drop = reading downhill less reading uphill; less than nothing where the ground rises. Run = how far the sticks are apart, with the tape held level. Write both down.</source>
        <translation>Desnivel = lectura de abajo menos lectura de arriba; menos que cero donde el terreno sube. Distancia = lo que hay entre las varas, con la cinta de medir a nivel. Anote las dos.</translation>
    </message>
    <message>
        <source>The uphill stick goes where the downhill one stood, and so on over the whole place of the tank and some metres beyond.</source>
        <translation>La vara de arriba pasa a donde estaba la de abajo, y así por todo el lugar del tanque y unos metros más allá.</translation>
    </message>
    <message>
        <source>Sum</source>
        <translation>Suma</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Tramo</translation>
    </message>
    <message>
        <source>Uphill, m</source>
        <translation>Arriba, m</translation>
    </message>
    <message>
        <source>Downhill, m</source>
        <translation>Abajo, m</translation>
    </message>
    <message>
        <source>Drop, m</source>
        <translation>Desnivel, m</translation>
    </message>
    <message>
        <source>Run, m</source>
        <translation>Distancia, m</translation>
    </message>
    <message>
        <source>How steep is the ground? Water in a hose stands equally high at both ends.</source>
        <translation>¿Qué tan empinado es el terreno? El agua en una manguera queda a la misma altura en las dos puntas.</translation>
    </message>
    <message>
        <source>Fall in percent = sum of the drops ÷ sum of the runs × %1.</source>
        <translation>Pendiente en porcentaje = suma de los desniveles ÷ suma de las distancias × %1.</translation>
    </message>
    <message>
        <source>Fall, %:</source>
        <translation>Pendiente, %:</translation>
    </message>
    <message>
        <source>Downhill toward, by compass:</source>
        <translation>Cuesta abajo hacia, por brújula:</translation>
    </message>
    <message>
        <source>Type runs and drops in on the tab %1.</source>
        <translation>Escriba distancias y desniveles en la pestaña %1.</translation>
    </message>
    <message>
        <source>How the hose is used: %1.</source>
        <translation>Cómo se usa la manguera: %1.</translation>
    </message>
    <message>
        <source>first on %1</source>
        <translation>desde el %1</translation>
    </message>
    <message>
        <source>How the tank grows, with the first day on which it stands so.</source>
        <translation>Cómo crece el tanque, con el primer día en que está así.</translation>
    </message>
    <message>
        <source>How the tank grows, cut upright at A-A.</source>
        <translation>Cómo crece el tanque, cortado a plomo por A-A.</translation>
    </message>
    <message>
        <source>Wet cement burns, its dust harms the lungs. Wear all of these; wash splashes off at once with much clean water.</source>
        <translation>El cemento mojado quema y su polvo daña los pulmones. Use todo esto; lave enseguida las salpicaduras con mucha agua limpia.</translation>
    </message>
    <message>
        <source>Nobody goes into the pit alone: one works, one stays at the top, watches the walls and can fetch help.</source>
        <translation>Nadie entra solo a la excavación: uno trabaja, otro se queda arriba, vigila las paredes y puede ir por ayuda.</translation>
    </message>
    <message>
        <source>Thickness, rammed</source>
        <translation>Espesor, apisonado</translation>
    </message>
    <message>
        <source>Stone to bring, loose</source>
        <translation>Piedra por traer, suelta</translation>
    </message>
    <message>
        <source>Top of the bed below the string at ground level</source>
        <translation>Cara de arriba del lecho, bajo el cordel a ras de suelo</translation>
    </message>
    <message>
        <source>Stone bed under the floor</source>
        <translation>Lecho de piedra bajo el piso</translation>
    </message>
    <message>
        <source>Nobody goes into the pit alone. Heavy stones: two people. Hand them or let them down; never throw stones into a pit where somebody stands.</source>
        <translation>Nadie entra solo a la excavación. Piedras pesadas: dos personas. Páselas de mano en mano o bájelas despacio; nunca tire piedras a una excavación donde hay alguien.</translation>
    </message>
    <message>
        <source>Take hard, clean stones, about %1 high when they stand on edge. No soft or rotten ones.</source>
        <translation>Escoja piedras duras y limpias, de unos %1 de alto puestas de canto. Ninguna blanda ni podrida.</translation>
    </message>
    <message>
        <source>Set them on edge on the rammed floor, close together, from the far side toward the ladder.</source>
        <translation>Colóquelas de canto sobre el fondo apisonado, bien juntas, desde el lado más lejano hacia la escalera.</translation>
    </message>
    <message>
        <source>Ram them until none moves under the foot. Fill all gaps with gravel and small stones, and ram again.</source>
        <translation>Apisónelas hasta que ninguna se mueva al pisarla. Rellene todos los huecos con grava y piedra chica, y apisone otra vez.</translation>
    </message>
    <message>
        <source>Check with string and rod in the middle and along all sides: the top lies %1 below the string everywhere.</source>
        <translation>Revise con cordel y vara en el medio y a lo largo de todos los lados: la cara de arriba queda en todas partes %1 bajo el cordel.</translation>
    </message>
    <message>
        <source>Wash dust off and keep the bed moist until the first coat goes on.</source>
        <translation>Lave el polvo y mantenga húmedo el lecho hasta que se coloque la primera capa.</translation>
    </message>
    <message>
        <source>Pit:</source>
        <translation>Calicata:</translation>
    </message>
    <message>
        <source>A narrow pit caves in on whoever stands in it. Nobody climbs into one deeper than the waist: look from above, lift soil out with the spade. Deeper than %1 only with an auger or a wide, leaning pit.</source>
        <translation>Una calicata angosta se derrumba sobre quien está adentro. Nadie baja a una más honda que la cintura: mire desde arriba y saque la tierra con la pala. A más de %1, solo con barreno o con una calicata ancha y con talud.</translation>
    </message>
    <message>
        <source>Two people at each pit. Fence or cover it while it is open, and fill it when it has been logged: people and animals fall in.</source>
        <translation>Dos personas en cada calicata. Cérquela o tápela mientras esté abierta, y rellénela cuando esté anotada: la gente y los animales se caen adentro.</translation>
    </message>
    <message>
        <source>Dig or bore two or three, at the tank&apos;s place and beside it. The tank&apos;s pit will be %1 deep (dashed line): go deeper.</source>
        <translation>Cave o barrene dos o tres, en el lugar del tanque y al lado. La excavación del tanque tendrá %1 de hondo (línea cortada): vaya más hondo.</translation>
    </message>
    <message>
        <source>Draw a line in the strip wherever the soil changes, and write one row of the log for each layer. Soil is one of: %1.</source>
        <translation>Trace una línea en la tira donde cambie el suelo, y escriba una fila del registro por cada capa. El suelo es uno de estos: %1.</translation>
    </message>
    <message>
        <source>Write how deep water comes in. Look again the next day, and in the wet months.</source>
        <translation>Escriba a qué profundidad entra agua. Vuelva a mirar al día siguiente y en los meses de lluvia.</translation>
    </message>
    <message>
        <source>Hard: a pick is needed. Firm: the spade goes in under the foot. Soft: the thumb goes in.</source>
        <translation>Duro: hace falta pico. Firme: la pala entra con el pie. Blando: entra el pulgar.</translation>
    </message>
    <message>
        <source>Type the layers in on the tab %1.</source>
        <translation>Escriba las capas en la pestaña %1.</translation>
    </message>
    <message>
        <source>Pit</source>
        <translation>Calicata</translation>
    </message>
    <message>
        <source>From, m</source>
        <translation>De, m</translation>
    </message>
    <message>
        <source>To, m</source>
        <translation>A, m</translation>
    </message>
    <message>
        <source>Soil</source>
        <translation>Suelo</translation>
    </message>
    <message>
        <source>Hard, firm or soft</source>
        <translation>Duro, firme o blando</translation>
    </message>
    <message>
        <source>Water at, m</source>
        <translation>Agua a, m</translation>
    </message>
    <message>
        <source>Logged by:</source>
        <translation>Anotó:</translation>
    </message>
    <message>
        <source>Wanted in the month</source>
        <translation>Se necesita en el mes</translation>
    </message>
    <message>
        <source>There to use in the month</source>
        <translation>Hay para usar en el mes</translation>
    </message>
    <message>
        <source>There to use each day</source>
        <translation>Hay para usar cada día</translation>
    </message>
    <message>
        <source>Stick, usual year</source>
        <translation>Vara, año normal</translation>
    </message>
    <message>
        <source>Stick, bad year</source>
        <translation>Vara, año malo</translation>
    </message>
    <message>
        <source>Used each day</source>
        <translation>Usado cada día</translation>
    </message>
    <message>
        <source>On the first of each month read the dip-stick and look at the row.</source>
        <translation>El primero de cada mes lea la vara para medir el agua y mire la fila.</translation>
    </message>
    <message>
        <source>As much as in a usual year, or more: use what the row says for each day. Less than in a bad year: use less from this day on, and water the beds that matter most. Between: use with care.</source>
        <translation>Lo mismo que en un año normal, o más: use lo que la fila dice por día. Menos que en un año malo: use menos desde ese día y riegue las camas que más importan. Entre los dos: use con cuidado.</translation>
    </message>
    <message>
        <source>A bucket of the mix cards holds %1. Count the buckets of one day and write down what was used.</source>
        <translation>Un balde de las tarjetas de mezcla carga %1. Cuente los baldes de un día y anote lo usado.</translation>
    </message>
    <message>
        <source>Wanted and there to use: means of all years reckoned. Usual year: half of the years had more in the tank on that day. Bad year: one year in ten had less.</source>
        <translation>Se necesita y hay para usar: promedios de todos los años calculados. Año normal: la mitad de los años tenía más en el tanque ese día. Año malo: uno de cada diez años tenía menos.</translation>
    </message>
</context>
<context>
    <name>Summary</name>
    <message>
        <source>Farm water tank</source>
        <translation>Tanque de agua para la finca</translation>
    </message>
    <message>
        <source>to the rim</source>
        <translation>hasta el borde</translation>
    </message>
    <message>
        <source>to the overflow level</source>
        <translation>hasta el rebosadero</translation>
    </message>
    <message>
        <source>usable above the dead depth</source>
        <translation>útil sobre la profundidad muerta</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>Cabida</translation>
    </message>
    <message>
        <source>clear, at the finished floor</source>
        <translation>interior, en el piso terminado</translation>
    </message>
    <message>
        <source>clear, at the rim</source>
        <translation>interior, en el borde</translation>
    </message>
    <message>
        <source>clear depth, floor to rim</source>
        <translation>profundidad interior, del piso al borde</translation>
    </message>
    <message>
        <source>pit, at the ground</source>
        <translation>excavación, a ras de suelo</translation>
    </message>
    <message>
        <source>pit, at its floor</source>
        <translation>excavación, en su fondo</translation>
    </message>
    <message>
        <source>pit depth below the ground</source>
        <translation>profundidad de la excavación bajo el suelo</translation>
    </message>
    <message>
        <source>earth dug, as it lies</source>
        <translation>tierra por cavar, en banco</translation>
    </message>
    <message>
        <source>spoil, loose</source>
        <translation>tierra sacada, suelta</translation>
    </message>
    <message>
        <source>Sizes (diameters)</source>
        <translation>Medidas (diámetros)</translation>
    </message>
    <message>
        <source>Sizes (length x width)</source>
        <translation>Medidas (largo x ancho)</translation>
    </message>
    <message>
        <source>Layers (thickness, volume, face)</source>
        <translation>Capas (espesor, volumen, cara)</translation>
    </message>
    <message>
        <source>Materials (net, order)</source>
        <translation>Materiales (neto, pedido)</translation>
    </message>
    <message>
        <source>Customary bill beside the computed one (customary; exact shells; area times thickness)</source>
        <translation>Lista acostumbrada junto a la calculada (acostumbrada; capas exactas; área por espesor)</translation>
    </message>
    <message>
        <source>no answer</source>
        <translation>sin respuesta</translation>
    </message>
    <message>
        <source>trust thickness and mix: cement</source>
        <translation>valen espesor y mezcla: cemento</translation>
    </message>
    <message>
        <source>trust cement and mix: thickness of the coats</source>
        <translation>valen cemento y mezcla: espesor de las capas</translation>
    </message>
    <message>
        <source>trust cement and thickness: soil:sand:cement</source>
        <translation>valen cemento y espesor: tierra:arena:cemento</translation>
    </message>
    <message>
        <source>Which to trust (exact shells; area times thickness)</source>
        <translation>En qué confiar (capas exactas; área por espesor)</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Labour (at the rate used, range, who)</source>
        <translation>Mano de obra (con el rendimiento usado, rango, quién)</translation>
    </message>
    <message>
        <source>Order of work (first day, last day, crew)</source>
        <translation>Orden del trabajo (primer día, último día, cuadrilla)</translation>
    </message>
    <message>
        <source>What to know</source>
        <translation>Lo que hay que saber</translation>
    </message>
    <message>
        <source>Will the water last</source>
        <translation>¿Alcanzará el agua?</translation>
    </message>
    <message>
        <source>Dates</source>
        <translation>Fechas</translation>
    </message>
    <message>
        <source>Coats in one go</source>
        <translation>Capas de una sola vez</translation>
    </message>
    <message>
        <source>First filling</source>
        <translation>Primer llenado</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>Clima</translation>
    </message>
    <message>
        <source>no price</source>
        <translation>sin precio</translation>
    </message>
    <message>
        <source>Bill</source>
        <translation>Presupuesto</translation>
    </message>
    <message>
        <source>Money</source>
        <translation>Dinero</translation>
    </message>
    <message>
        <source>Linings by what they cost a year</source>
        <translation>Revestimientos según su costo anual equivalente</translation>
    </message>
    <message>
        <source>Options side by side</source>
        <translation>Opciones lado a lado</translation>
    </message>
    <message>
        <source>How sure is it</source>
        <translation>¿Qué tan seguro es?</translation>
    </message>
    <message>
        <source>Carriage, together</source>
        <translation>Acarreo, en total</translation>
    </message>
    <message>
        <source>For what is not foreseen</source>
        <translation>Imprevistos</translation>
    </message>
    <message>
        <source>All together</source>
        <translation>En total</translation>
    </message>
</context>
<context>
    <name>app</name>
    <message>
        <source>problem</source>
        <translation>problema</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>There is no translation for %1 yet; texts are in English.</source>
        <translation>Todavía no hay traducción para %1; los textos están en inglés.</translation>
    </message>
    <message>
        <source>%1: no problems found.</source>
        <translation>%1: no se encontraron problemas.</translation>
    </message>
    <message>
        <source>%1 cannot be read: %2</source>
        <translation>No se puede leer %1: %2</translation>
    </message>
    <message>
        <source>This project has no sheet %1.</source>
        <translation>Este proyecto no tiene la hoja %1.</translation>
    </message>
</context>
<context>
    <name>ui::Actions</name>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Archivo</translation>
    </message>
    <message>
        <source>&amp;New</source>
        <translation>&amp;Nuevo</translation>
    </message>
    <message>
        <source>Open the e&amp;xample</source>
        <translation>Abrir el e&amp;jemplo</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>&amp;Abrir…</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>Abrir &amp;reciente</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>G&amp;uardar como…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+S</source>
        <translation>Ctrl+Shift+S</translation>
    </message>
    <message>
        <source>&amp;Export…</source>
        <translation>&amp;Exportar…</translation>
    </message>
    <message>
        <source>Ctrl+E</source>
        <translation>Ctrl+E</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Imprimir…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Salir</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Editar</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Deshacer</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Rehacer</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ver</translation>
    </message>
    <message>
        <source>&amp;Pit</source>
        <translation>&amp;Excavación</translation>
    </message>
    <message>
        <source>&amp;Drawings</source>
        <translation>&amp;Dibujos</translation>
    </message>
    <message>
        <source>&amp;Sheets</source>
        <translation>&amp;Hojas</translation>
    </message>
    <message>
        <source>Look from &amp;above and aside</source>
        <translation>Mirar desde &amp;arriba y de lado</translation>
    </message>
    <message>
        <source>Look straight d&amp;own</source>
        <translation>Mirar &amp;recto hacia abajo</translation>
    </message>
    <message>
        <source>Look at the &amp;cut</source>
        <translation>Mirar el &amp;corte</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>&amp;Unidades</translation>
    </message>
    <message>
        <source>&amp;Metres</source>
        <translation>&amp;Metros</translation>
    </message>
    <message>
        <source>&amp;Feet and inches</source>
        <translation>&amp;Pies y pulgadas</translation>
    </message>
    <message>
        <source>&amp;Colours</source>
        <translation>Co&amp;lores</translation>
    </message>
    <message>
        <source>As the &amp;desktop</source>
        <translation>Como el &amp;escritorio</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Claro</translation>
    </message>
    <message>
        <source>D&amp;ark</source>
        <translation>&amp;Oscuro</translation>
    </message>
    <message>
        <source>As the desktop</source>
        <translation>Como el escritorio</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>A&amp;yuda</translation>
    </message>
    <message>
        <source>&amp;About Tankwright</source>
        <translation>&amp;Acerca de Tankwright</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Herramientas</translation>
    </message>
    <message>
        <source>&amp;Water</source>
        <translation>A&amp;gua</translation>
    </message>
    <message>
        <source>&amp;Ground</source>
        <translation>&amp;Terreno</translation>
    </message>
    <message>
        <source>P&amp;ipes</source>
        <translation>Tu&amp;berías</translation>
    </message>
    <message>
        <source>Wor&amp;ks</source>
        <translation>&amp;Obra</translation>
    </message>
    <message>
        <source>&amp;Money</source>
        <translation>Di&amp;nero</translation>
    </message>
    <message>
        <source>&amp;Options</source>
        <translation>O&amp;pciones</translation>
    </message>
    <message>
        <source>Open from s&amp;hort form…</source>
        <translation>Abrir de &amp;forma corta…</translation>
    </message>
    <message>
        <source>&amp;Copy the design in short form</source>
        <translation>&amp;Copiar el diseño en forma corta</translation>
    </message>
    <message>
        <source>Group &amp;view, whole screen</source>
        <translation>&amp;Vista de grupo, pantalla completa</translation>
    </message>
    <message>
        <source>No&amp;tes</source>
        <translation>Apun&amp;tes</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Idioma</translation>
    </message>
    <message>
        <source>As the language</source>
        <translation>Según el idioma</translation>
    </message>
    <message>
        <source>&amp;Numbers and dates</source>
        <translation>Números y &amp;fechas</translation>
    </message>
</context>
<context>
    <name>ui::BillPanel</name>
    <message>
        <source> then </source>
        <translation> y luego </translation>
    </message>
    <message>
        <source>Use this thickness</source>
        <translation>Usar este espesor</translation>
    </message>
    <message>
        <source>Use this mix</source>
        <translation>Usar esta mezcla</translation>
    </message>
    <message>
        <source>Enter the bill people reckon with today (at the left) to see it beside this one.</source>
        <translation>Anote (a la izquierda) la lista con que se calcula hoy por costumbre, para verla junto a esta.</translation>
    </message>
    <message>
        <source>bill</source>
        <translation>lista</translation>
    </message>
    <message>
        <source>computed</source>
        <translation>calculado</translation>
    </message>
    <message>
        <source>  area × thickness</source>
        <translation>  área × espesor</translation>
    </message>
    <message>
        <source>Trust thickness and mix: cement %1 (area × thickness: %2).</source>
        <translation>Si valen espesor y mezcla: cemento %1 (área × espesor: %2).</translation>
    </message>
    <message>
        <source>Trust the bill&apos;s cement and the mix: coats of %1 (area × thickness: %2).</source>
        <translation>Si valen el cemento de la lista y la mezcla: capas de %1 (área × espesor: %2).</translation>
    </message>
    <message>
        <source>Trust the bill&apos;s cement and the mix: no thickness answers to them.</source>
        <translation>Si valen el cemento de la lista y la mezcla: ningún espesor les corresponde.</translation>
    </message>
    <message>
        <source>Trust the bill&apos;s cement and the thickness: mix %1, soil : sand : cement (area × thickness: %2).</source>
        <translation>Si valen el cemento de la lista y el espesor: mezcla %1, tierra : arena : cemento (área × espesor: %2).</translation>
    </message>
    <message>
        <source>Trust the bill&apos;s cement and the thickness: no mix answers to them.</source>
        <translation>Si valen el cemento de la lista y el espesor: ninguna mezcla les corresponde.</translation>
    </message>
    <message>
        <source>ratio</source>
        <translation>razón</translation>
    </message>
</context>
<context>
    <name>ui::BillTable</name>
    <message>
        <source>The bill</source>
        <translation>El presupuesto</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Concepto</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Precio</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Monto</translation>
    </message>
    <message>
        <source>Given</source>
        <translation>Aporte</translation>
    </message>
    <message>
        <source>Paid</source>
        <translation>Pagado</translation>
    </message>
    <message>
        <source>Loads</source>
        <translation>Cargas</translation>
    </message>
    <message>
        <source>Carriage</source>
        <translation>Acarreo</translation>
    </message>
    <message>
        <source>Carriage, together</source>
        <translation>Acarreo, en total</translation>
    </message>
    <message>
        <source>For what is not foreseen</source>
        <translation>Imprevistos</translation>
    </message>
    <message>
        <source>All together</source>
        <translation>En total</translation>
    </message>
</context>
<context>
    <name>ui::ChartView</name>
    <message>
        <source>Point at the chart, or walk through it with the arrow keys.</source>
        <translation>Señale un punto del gráfico, o recórralo con las teclas de flecha.</translation>
    </message>
</context>
<context>
    <name>ui::ChoiceRow</name>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
</context>
<context>
    <name>ui::CoatsPanel</name>
    <message>
        <source>Add a coat</source>
        <translation>Agregar una capa</translation>
    </message>
    <message>
        <source>Adds a coat on the water side, like the last one</source>
        <translation>Agrega una capa del lado del agua, igual a la última</translation>
    </message>
    <message>
        <source>%1, against the earth</source>
        <translation>%1, contra la tierra</translation>
    </message>
    <message>
        <source>Take out %1</source>
        <translation>Quitar %1</translation>
    </message>
    <message>
        <source>Take out a coat</source>
        <translation>Quitar una capa</translation>
    </message>
</context>
<context>
    <name>ui::CutControls</name>
    <message>
        <source>&amp;Cut open</source>
        <translation>&amp;Cortado</translation>
    </message>
    <message>
        <source>along</source>
        <translation>a lo largo</translation>
    </message>
    <message>
        <source>across</source>
        <translation>a lo ancho</translation>
    </message>
    <message>
        <source>Direction of the cut: along the length or across it</source>
        <translation>Dirección del corte: a lo largo o a lo ancho</translation>
    </message>
    <message>
        <source>Direction of the cut</source>
        <translation>Dirección del corte</translation>
    </message>
    <message>
        <source>Place of the cut; the middle of the slider is the middle of the tank</source>
        <translation>Lugar del corte; el medio del deslizador es el medio del tanque</translation>
    </message>
    <message>
        <source>Place of the cut</source>
        <translation>Lugar del corte</translation>
    </message>
</context>
<context>
    <name>ui::DeliveryPanel</name>
    <message>
        <source>Plan pipes and overflow</source>
        <translation>Planear tuberías y rebosadero</translation>
    </message>
    <message>
        <source>How does the water come, and where does too much of it go?</source>
        <translation>¿Cómo llega el agua, y adónde va la que sobra?</translation>
    </message>
    <message>
        <source>Heads along the line</source>
        <translation>Cargas a lo largo de la tubería</translation>
    </message>
    <message>
        <source>Water level while the line runs wide open</source>
        <translation>Nivel del agua con la tubería abierta del todo</translation>
    </message>
    <message>
        <source>From the source</source>
        <translation>De la fuente</translation>
    </message>
    <message>
        <source>The way of the pipe, from its inlet at the source to its end at the tank</source>
        <translation>El recorrido de la tubería, desde su entrada en la fuente hasta su extremo en el tanque</translation>
    </message>
    <message>
        <source>To the field</source>
        <translation>Al campo</translation>
    </message>
    <message>
        <source>The way of the pipe, from the rim of the tank to the outlets</source>
        <translation>El recorrido de la tubería, desde el borde del tanque hasta las salidas</translation>
    </message>
    <message>
        <source>Overflow</source>
        <translation>Rebosadero</translation>
    </message>
    <message>
        <source>Water at the rim in a storm</source>
        <translation>Agua en el borde durante un aguacero</translation>
    </message>
    <message>
        <source>Silt trap</source>
        <translation>Desarenador</translation>
    </message>
    <message>
        <source>Leak test</source>
        <translation>Prueba de fuga</translation>
    </message>
</context>
<context>
    <name>ui::DrawingsPanel</name>
    <message>
        <source>Drawing of the tank</source>
        <translation>Dibujo del tanque</translation>
    </message>
    <message>
        <source>Plan and section</source>
        <translation>Planta y corte</translation>
    </message>
    <message>
        <source>Setting-out</source>
        <translation>Replanteo</translation>
    </message>
    <message>
        <source>Foot of the wall</source>
        <translation>Pie de la pared</translation>
    </message>
    <message>
        <source>Sections A-A and B-B</source>
        <translation>Cortes A-A y B-B</translation>
    </message>
</context>
<context>
    <name>ui::EditorPanel</name>
    <message>
        <source>Plan people and dates</source>
        <translation>Planear personas y fechas</translation>
    </message>
    <message>
        <source>Place and soil</source>
        <translation>Lugar y suelo</translation>
    </message>
    <message>
        <source>Tank, finished inside</source>
        <translation>Tanque, interior terminado</translation>
    </message>
    <message>
        <source>Stone bed and coats</source>
        <translation>Lecho de piedra y capas</translation>
    </message>
    <message>
        <source>Materials and measures</source>
        <translation>Materiales y medidas</translation>
    </message>
    <message>
        <source>Customary bill</source>
        <translation>Lista acostumbrada</translation>
    </message>
    <message>
        <source>People and dates</source>
        <translation>Personas y fechas</translation>
    </message>
    <message>
        <source>Smallest tank recommended</source>
        <translation>Tanque mínimo recomendado</translation>
    </message>
    <message>
        <source>Roof, ground and losses</source>
        <translation>Techo, terreno y pérdidas</translation>
    </message>
    <message>
        <source>Needs and target</source>
        <translation>Necesidades y meta</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>Clima</translation>
    </message>
    <message>
        <source>Override by a licensed engineer</source>
        <translation>Excepción de un ingeniero autorizado</translation>
    </message>
    <message>
        <source>Ground and platform</source>
        <translation>Terreno y plataforma</translation>
    </message>
    <message>
        <source>Pipe from the source</source>
        <translation>Tubería de la fuente</translation>
    </message>
    <message>
        <source>Pipe to the field</source>
        <translation>Tubería al campo</translation>
    </message>
    <message>
        <source>Overflow and spill path</source>
        <translation>Rebosadero y camino de desagüe</translation>
    </message>
    <message>
        <source>Silt trap</source>
        <translation>Desarenador</translation>
    </message>
    <message>
        <source>Leak test</source>
        <translation>Prueba de fuga</translation>
    </message>
    <message>
        <source>First filling</source>
        <translation>Primer llenado</translation>
    </message>
    <message>
        <source>Loads and money</source>
        <translation>Cargas y dinero</translation>
    </message>
    <message>
        <source>Limits of the search</source>
        <translation>Límites de la búsqueda</translation>
    </message>
</context>
<context>
    <name>ui::Explained</name>
    <message>
        <source>From: %1</source>
        <translation>A partir de: %1</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Fuente: %1</translation>
    </message>
    <message>
        <source>How is this reckoned?</source>
        <translation>¿Cómo se calcula?</translation>
    </message>
    <message>
        <source>How is this reckoned? %1</source>
        <translation>¿Cómo se calcula? %1</translation>
    </message>
    <message>
        <source>Unfolded; press to fold</source>
        <translation>Abierto; pulse para cerrar</translation>
    </message>
    <message>
        <source>Folded; press to unfold</source>
        <translation>Cerrado; pulse para abrir</translation>
    </message>
    <message>
        <source>There is no number to reckon yet.</source>
        <translation>Todavía no hay un número que calcular.</translation>
    </message>
</context>
<context>
    <name>ui::Export</name>
    <message>
        <source>The ending of “%1” is not one of %2.</source>
        <translation>La terminación de «%1» no es una de estas: %2.</translation>
    </message>
    <message>
        <source>Keep the bare walls wet</source>
        <translation>Mantener mojadas las paredes descubiertas</translation>
    </message>
</context>
<context>
    <name>ui::FieldRow</name>
    <message>
        <source>This would do now: press Enter to use it, Escape to leave it.</source>
        <translation>Ahora serviría: pulse Intro para usarlo, Escape para dejarlo.</translation>
    </message>
</context>
<context>
    <name>ui::FiguresPanel</name>
    <message>
        <source>To look out for</source>
        <translation>A tener en cuenta</translation>
    </message>
    <message>
        <source>Customary bill</source>
        <translation>Lista acostumbrada</translation>
    </message>
</context>
<context>
    <name>ui::FindingsList</name>
    <message>
        <source>show</source>
        <translation>mostrar</translation>
    </message>
</context>
<context>
    <name>ui::FlagRow</name>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
</context>
<context>
    <name>ui::GroundPanel</name>
    <message>
        <source>The ground seen from above</source>
        <translation>El terreno visto desde arriba</translation>
    </message>
    <message>
        <source>From above</source>
        <translation>Desde arriba</translation>
    </message>
    <message>
        <source>Spot heights</source>
        <translation>Cotas</translation>
    </message>
    <message>
        <source>Platform &amp;level</source>
        <translation>&amp;Nivel de la plataforma</translation>
    </message>
    <message>
        <source>Level of the platform over the ground at the middle of the tank</source>
        <translation>Nivel de la plataforma sobre el terreno en el centro del tanque</translation>
    </message>
    <message>
        <source>Level of the platform</source>
        <translation>Nivel de la plataforma</translation>
    </message>
    <message>
        <source>Cut %1, fill %2</source>
        <translation>Corte %1, relleno %2</translation>
    </message>
    <message>
        <source>Not possible on this ground</source>
        <translation>No es posible en este terreno</translation>
    </message>
    <message>
        <source>no platform</source>
        <translation>sin plataforma</translation>
    </message>
</context>
<context>
    <name>ui::MainWindow</name>
    <message>
        <source>Pit</source>
        <translation>Excavación</translation>
    </message>
    <message>
        <source>Drawings</source>
        <translation>Dibujos</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Hojas</translation>
    </message>
    <message>
        <source>not saved yet</source>
        <translation>aún sin guardar</translation>
    </message>
    <message>
        <source>%1[*] – Tankwright</source>
        <translation>%1[*] – Tankwright</translation>
    </message>
    <message>
        <source>%1 (%2)[*] – Tankwright</source>
        <translation>%1 (%2)[*] – Tankwright</translation>
    </message>
    <message>
        <source>About Tankwright</source>
        <translation>Acerca de Tankwright</translation>
    </message>
    <message>
        <source>&lt;b&gt;Tankwright %1&lt;/b&gt;&lt;p&gt;Plans small hand-dug farm water tanks lined with soil-cement plaster.&lt;/p&gt;&lt;p&gt;Digging, cement, lifting and open water can hurt and kill. Local codes and licensed practice come first; this program does not replace them.&lt;/p&gt;</source>
        <translation>&lt;b&gt;Tankwright %1&lt;/b&gt;&lt;p&gt;Planea tanques pequeños de agua para la finca, cavados a mano y revestidos con repello de suelo-cemento.&lt;/p&gt;&lt;p&gt;Cavar, el cemento, levantar peso y el agua abierta pueden herir y matar. Las normas locales y el ejercicio profesional autorizado van primero; este programa no los reemplaza.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>Unsaved work</source>
        <translation>Trabajo sin guardar</translation>
    </message>
    <message>
        <source>This project has changes that are not saved.</source>
        <translation>Este proyecto tiene cambios sin guardar.</translation>
    </message>
    <message>
        <source>%1 was not opened.</source>
        <translation>No se abrió %1.</translation>
    </message>
    <message>
        <source>%1 is open.</source>
        <translation>%1 está abierto.</translation>
    </message>
    <message>
        <source>Not saved; your changes are still here.</source>
        <translation>No se guardó; sus cambios siguen aquí.</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Guardado como %1.</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>y %1 más</translation>
    </message>
    <message>
        <source>Open a project</source>
        <translation>Abrir un proyecto</translation>
    </message>
    <message>
        <source>Tankwright projects (*.tankwright);;All files (*)</source>
        <translation>Proyectos de Tankwright (*.tankwright);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>tank</source>
        <translation>tanque</translation>
    </message>
    <message>
        <source>Save the project</source>
        <translation>Guardar el proyecto</translation>
    </message>
    <message>
        <source>Tankwright projects (*.tankwright)</source>
        <translation>Proyectos de Tankwright (*.tankwright)</translation>
    </message>
    <message>
        <source>Sheets as PDF (*.pdf)</source>
        <translation>Hojas en PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Tables as CSV (*.csv)</source>
        <translation>Tablas en CSV (*.csv)</translation>
    </message>
    <message>
        <source>Solids as STL (*.stl)</source>
        <translation>Sólidos en STL (*.stl)</translation>
    </message>
    <message>
        <source>Solids as glTF (*.glb)</source>
        <translation>Sólidos en glTF (*.glb)</translation>
    </message>
    <message>
        <source>Plan and section (*.svg)</source>
        <translation>Planta y corte (*.svg)</translation>
    </message>
    <message>
        <source>Picture of the pit (*.png)</source>
        <translation>Imagen de la excavación (*.png)</translation>
    </message>
    <message>
        <source>Export</source>
        <translation>Exportar</translation>
    </message>
    <message>
        <source>Writing %1…</source>
        <translation>Escribiendo %1…</translation>
    </message>
    <message>
        <source>Written: %1.</source>
        <translation>Escrito: %1.</translation>
    </message>
    <message>
        <source>%1 was not written. %2</source>
        <translation>No se escribió %1. %2</translation>
    </message>
    <message>
        <source>a project without a name</source>
        <translation>un proyecto sin nombre</translation>
    </message>
    <message>
        <source>The program stopped before %1 was saved. What you had at %2 is kept.</source>
        <translation>El programa se detuvo antes de guardar %1. Se conserva lo que usted tenía el %2.</translation>
    </message>
    <message>
        <source>Take it up again</source>
        <translation>Retomarlo</translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translation>Desecharlo</translation>
    </message>
    <message>
        <source>The kept work cannot be used.</source>
        <translation>El trabajo conservado no se puede usar.</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>Read a daily record</source>
        <translation>Leer un registro diario</translation>
    </message>
    <message>
        <source>Tables with date, rain_mm, t_min_c, t_max_c (*.csv *.txt *.tsv);;All files (*)</source>
        <translation>Tablas con date, rain_mm, t_min_c, t_max_c (*.csv *.txt *.tsv);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>%1 cannot be read: %2</source>
        <translation>No se puede leer %1: %2</translation>
    </message>
    <message>
        <source>%1 was not taken; nothing has changed.</source>
        <translation>No se tomó %1; nada ha cambiado.</translation>
    </message>
    <message>
        <source>%1: %2 taken.</source>
        <translation>%1: se tomaron %2.</translation>
    </message>
    <message>
        <source>Ground</source>
        <translation>Terreno</translation>
    </message>
    <message>
        <source>Pipes</source>
        <translation>Tuberías</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>Leyendo %1</translation>
    </message>
    <message>
        <source>Read spot heights</source>
        <translation>Leer cotas</translation>
    </message>
    <message>
        <source>Joining %1 spot heights to triangles</source>
        <translation>Uniendo %1 cotas en triángulos</translation>
    </message>
    <message>
        <source>Tables with east, north, height in metres (*.csv *.txt *.tsv);;All files (*)</source>
        <translation>Tablas con este, norte, altura en metros (*.csv *.txt *.tsv);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Works</source>
        <translation>Obra</translation>
    </message>
    <message>
        <source>Money</source>
        <translation>Dinero</translation>
    </message>
    <message>
        <source>Options</source>
        <translation>Opciones</translation>
    </message>
    <message>
        <source>Read a district file</source>
        <translation>Leer un archivo del distrito</translation>
    </message>
    <message>
        <source>District files (*.district);;All files (*)</source>
        <translation>Archivos del distrito (*.district);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Write a district file</source>
        <translation>Escribir un archivo del distrito</translation>
    </message>
    <message>
        <source>District files (*.district)</source>
        <translation>Archivos del distrito (*.district)</translation>
    </message>
    <message>
        <source>%1: prices, records and rates taken.</source>
        <translation>%1: se tomaron los precios, registros y rendimientos.</translation>
    </message>
    <message>
        <source>%1 was not written.</source>
        <translation>No se escribió %1.</translation>
    </message>
    <message>
        <source>Dates for a calendar (*.ics)</source>
        <translation>Fechas para un calendario (*.ics)</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Apuntes</translation>
    </message>
    <message>
        <source>The short form was not taken.</source>
        <translation>No se tomó la forma corta.</translation>
    </message>
    <message>
        <source>The design is there. What a short form does not hold is as in a new project.</source>
        <translation>El diseño ya está abierto. Lo que una forma corta no contiene queda como en un proyecto nuevo.</translation>
    </message>
    <message>
        <source>Open from short form</source>
        <translation>Abrir de forma corta</translation>
    </message>
    <message>
        <source>Type, paste or scan the line from the cover sheet:</source>
        <translation>Escriba, pegue o escanee la línea de la hoja de portada:</translation>
    </message>
    <message>
        <source>The short form can be pasted into a message.</source>
        <translation>La forma corta ya se puede pegar en un mensaje.</translation>
    </message>
</context>
<context>
    <name>ui::MessageBar</name>
    <message>
        <source>Close this message</source>
        <translation>Cerrar este mensaje</translation>
    </message>
</context>
<context>
    <name>ui::MoneyPanel</name>
    <message>
        <source>What does it cost, and who gives what?</source>
        <translation>¿Cuánto cuesta, y quién pone qué?</translation>
    </message>
    <message>
        <source>Plan the money</source>
        <translation>Planear el dinero</translation>
    </message>
    <message>
        <source>Bill</source>
        <translation>Presupuesto</translation>
    </message>
    <message>
        <source>Prices. A quantity that is left empty comes from the plan.</source>
        <translation>Precios. Una cantidad que se deja vacía sale del plan.</translation>
    </message>
    <message>
        <source>Read a district file…</source>
        <translation>Leer un archivo del distrito…</translation>
    </message>
    <message>
        <source>Write a district file…</source>
        <translation>Escribir un archivo del distrito…</translation>
    </message>
    <message>
        <source>Money by day</source>
        <translation>Dinero por día</translation>
    </message>
    <message>
        <source>Money needed on each day</source>
        <translation>Dinero que hace falta cada día</translation>
    </message>
    <message>
        <source>Linings</source>
        <translation>Revestimientos</translation>
    </message>
    <message>
        <source>Linings by what they cost a year</source>
        <translation>Revestimientos según su costo anual equivalente</translation>
    </message>
    <message>
        <source>How sure is it?</source>
        <translation>¿Qué tan seguro es?</translation>
    </message>
    <message>
        <source>Being reckoned…</source>
        <translation>Se está calculando…</translation>
    </message>
    <message>
        <source>What the chart is about</source>
        <translation>De qué trata el gráfico</translation>
    </message>
    <message>
        <source>Spread of one outcome and what drives it</source>
        <translation>Variación de un resultado y de qué depende</translation>
    </message>
    <message>
        <source>How far each may lie from the value in force</source>
        <translation>Cuánto se puede apartar cada uno del valor que se usa</translation>
    </message>
    <message>
        <source>Price of the lining alone, digging left out. For soil-cement an empty price is reckoned from the bill and the works.</source>
        <translation>Precio solo del revestimiento, sin la excavación. Para suelo-cemento, un precio vacío se calcula con el presupuesto y la obra.</translation>
    </message>
</context>
<context>
    <name>ui::NotesPanel</name>
    <message>
        <source>In short</source>
        <translation>En resumen</translation>
    </message>
    <message>
        <source>Put these in place of what was entered</source>
        <translation>Poner esto en lugar de lo que se había anotado</translation>
    </message>
    <message>
        <source>Put the notes in place</source>
        <translation>Poner los apuntes en su lugar</translation>
    </message>
    <message>
        <source>Flow</source>
        <translation>Caudal</translation>
    </message>
    <message>
        <source>Ask in the tab Water whether the water lasts.</source>
        <translation>Pregunte en la pestaña Agua si el agua alcanza.</translation>
    </message>
    <message>
        <source>No flow measured yet.</source>
        <translation>Todavía no se ha medido ningún caudal.</translation>
    </message>
    <message>
        <source>Bucket and watch: time how long a vessel takes to fill, more than three times</source>
        <translation>Balde y reloj: mida cuánto tarda en llenarse un recipiente, más de tres veces</translation>
    </message>
    <message>
        <source>Jar</source>
        <translation>Frasco</translation>
    </message>
    <message>
        <source>Layers of soil settled in a jar, read with a ruler</source>
        <translation>Capas de tierra asentadas en un frasco, leídas con una regla</translation>
    </message>
    <message>
        <source>Ball and ribbon</source>
        <translation>Bola y cinta</translation>
    </message>
    <message>
        <source>Moist soil squeezed to a ball and pushed to a ribbon</source>
        <translation>Tierra húmeda apretada en bola y empujada en cinta</translation>
    </message>
    <message>
        <source>Test pits</source>
        <translation>Calicatas</translation>
    </message>
    <message>
        <source>Layers of the test pits, from the ground down</source>
        <translation>Capas de las calicatas, desde el suelo hacia abajo</translation>
    </message>
    <message>
        <source>Slope</source>
        <translation>Pendiente</translation>
    </message>
    <message>
        <source>Settings of the hose level, one after the other down the fall</source>
        <translation>Tramos de la manguera de nivel, uno tras otro cuesta abajo</translation>
    </message>
    <message>
        <source>Leak</source>
        <translation>Fuga</translation>
    </message>
    <message>
        <source>Plan pipes and overflow in the tab Pipes first.</source>
        <translation>Planee primero tuberías y rebosadero en la pestaña Tuberías.</translation>
    </message>
</context>
<context>
    <name>ui::NumberRow</name>
    <message>
        <source>by soil</source>
        <translation>según el suelo</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>ui::OptionsPanel</name>
    <message>
        <source>Side by side</source>
        <translation>Lado a lado</translation>
    </message>
    <message>
        <source>The options side by side at one scale</source>
        <translation>Las opciones lado a lado, a una misma escala</translation>
    </message>
    <message>
        <source>Find a size</source>
        <translation>Buscar un tamaño</translation>
    </message>
    <message>
        <source>Try all sizes</source>
        <translation>Probar todos los tamaños</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Alto</translation>
    </message>
    <message>
        <source>Share of the sizes tried</source>
        <translation>Parte de los tamaños ya probada</translation>
    </message>
    <message>
        <source>Money against years without a dry day</source>
        <translation>Dinero frente a años en que ningún día falta agua</translation>
    </message>
    <message>
        <source>%1. Click, or press Enter, to take this size.</source>
        <translation>%1. Haga clic, o pulse Intro, para tomar este tamaño.</translation>
    </message>
    <message>
        <source>Take the cheapest that meets the target</source>
        <translation>Tomar el más barato que cumple la meta</translation>
    </message>
    <message>
        <source>Take the largest within the limits</source>
        <translation>Tomar el más grande dentro de los límites</translation>
    </message>
    <message>
        <source>Sizes within the limits of footprint and depth: %1.</source>
        <translation>Tamaños dentro de los límites de área ocupada y profundidad: %1.</translation>
    </message>
    <message>
        <source>The limits stand at the left under “Limits of the search”: with ten bags as the limit, this answers what ten bags can build.</source>
        <translation>Los límites están a la izquierda, en «Límites de la búsqueda»: con diez bolsas como límite, esto responde qué se puede construir con diez bolsas.</translation>
    </message>
    <message>
        <source>The project has changed since: try again.</source>
        <translation>El proyecto ha cambiado desde entonces: pruebe otra vez.</translation>
    </message>
    <message>
        <source>Take a size</source>
        <translation>Tomar un tamaño</translation>
    </message>
    <message>
        <source>The limit on people is not used: people and dates are not part of this project.</source>
        <translation>El límite de personas no se usa: personas y fechas no son parte de este proyecto.</translation>
    </message>
    <message>
        <source>The limit on money is not used: prices are missing.</source>
        <translation>El límite de dinero no se usa: faltan precios.</translation>
    </message>
</context>
<context>
    <name>ui::OptionsTable</name>
    <message>
        <source>Options side by side</source>
        <translation>Opciones lado a lado</translation>
    </message>
    <message>
        <source>Add an option</source>
        <translation>Agregar una opción</translation>
    </message>
    <message>
        <source>Take out the option</source>
        <translation>Quitar la opción</translation>
    </message>
    <message>
        <source>Build this one</source>
        <translation>Construir esta</translation>
    </message>
    <message>
        <source>Field in which the options differ</source>
        <translation>Dato en que se diferencian las opciones</translation>
    </message>
    <message>
        <source>Differ also in…</source>
        <translation>Diferenciar también en…</translation>
    </message>
    <message>
        <source>Build another option</source>
        <translation>Construir otra opción</translation>
    </message>
    <message>
        <source>as before</source>
        <translation>como antes</translation>
    </message>
    <message>
        <source>Field in which options differ</source>
        <translation>Dato en que se diferencian opciones</translation>
    </message>
    <message>
        <source>A, as it stands</source>
        <translation>A, tal como está</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>As A. Type a value to change it.</source>
        <translation>Igual que A. Escriba un valor para cambiarlo.</translation>
    </message>
    <message>
        <source>Name of an option</source>
        <translation>Nombre de una opción</translation>
    </message>
    <message>
        <source>Being reckoned…</source>
        <translation>Se está calculando…</translation>
    </message>
</context>
<context>
    <name>ui::PitPanel</name>
    <message>
        <source>&amp;Dimensions</source>
        <translation>&amp;Medidas</translation>
    </message>
    <message>
        <source>The pit in three dimensions</source>
        <translation>La excavación en tres dimensiones</translation>
    </message>
    <message>
        <source>Oblique</source>
        <translation>Oblicua</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Planta</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Corte</translation>
    </message>
    <message>
        <source>View: %1</source>
        <translation>Vista: %1</translation>
    </message>
    <message>
        <source>Layers</source>
        <translation>Capas</translation>
    </message>
    <message>
        <source>Show and hide the ground, each layer, the water and the person</source>
        <translation>Mostrar y ocultar el terreno, cada capa, el agua y la persona</translation>
    </message>
    <message>
        <source>&amp;Water</source>
        <translation>A&amp;gua</translation>
    </message>
    <message>
        <source>Water level above the finished floor</source>
        <translation>Nivel del agua sobre el piso terminado</translation>
    </message>
    <message>
        <source>To the overflow</source>
        <translation>Hasta el rebosadero</translation>
    </message>
    <message>
        <source>%1 deep: %2</source>
        <translation>%1 de hondo: %2</translation>
    </message>
    <message>
        <source>What the water level follows</source>
        <translation>Qué sigue el nivel del agua</translation>
    </message>
    <message>
        <source>level set by hand</source>
        <translation>nivel puesto a mano</translation>
    </message>
    <message>
        <source>day of a middle year</source>
        <translation>día de un año intermedio</translation>
    </message>
    <message>
        <source>day of a dry year</source>
        <translation>día de un año seco</translation>
    </message>
    <message>
        <source>In a dry year the tank holds less than in nine of ten years on each day; the tab Water has the weather</source>
        <translation>En un año seco el tanque tiene cada día menos que en nueve de cada diez años; el clima está en la pestaña Agua</translation>
    </message>
    <message>
        <source>%1: %2 deep, %3</source>
        <translation>%1: %2 de hondo, %3</translation>
    </message>
</context>
<context>
    <name>ui::PointTable</name>
    <message>
        <source>Clear outline</source>
        <translation>Contorno interior</translation>
    </message>
    <message>
        <source>Add a point</source>
        <translation>Agregar un punto</translation>
    </message>
    <message>
        <source>Remove the point</source>
        <translation>Quitar el punto</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation>Pegar</translation>
    </message>
</context>
<context>
    <name>ui::RowTable</name>
    <message>
        <source>Add a row</source>
        <translation>Agregar una fila</translation>
    </message>
    <message>
        <source>Take out the row</source>
        <translation>Quitar la fila</translation>
    </message>
    <message>
        <source>Paste cells</source>
        <translation>Pegar celdas</translation>
    </message>
    <message>
        <source>Take out a row</source>
        <translation>Quitar una fila</translation>
    </message>
    <message>
        <source>Nothing was pasted.</source>
        <translation>No se pegó nada.</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
</context>
<context>
    <name>ui::SheetsPanel</name>
    <message>
        <source>Page before</source>
        <translation>Página anterior</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation>Página siguiente</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>Página</translation>
    </message>
    <message>
        <source>Size of the page on the screen</source>
        <translation>Tamaño de la página en la pantalla</translation>
    </message>
    <message>
        <source>Whole page</source>
        <translation>Página entera</translation>
    </message>
    <message>
        <source>Export PDF…</source>
        <translation>Exportar PDF…</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Imprimir…</translation>
    </message>
    <message>
        <source>Sheets to print</source>
        <translation>Hojas por imprimir</translation>
    </message>
    <message>
        <source>Tick what is to be printed</source>
        <translation>Marque lo que se va a imprimir</translation>
    </message>
    <message>
        <source>Language of the sheets</source>
        <translation>Idioma de las hojas</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Todas</translation>
    </message>
    <message>
        <source>Farmers</source>
        <translation>Agricultores</translation>
    </message>
    <message>
        <source>Masons</source>
        <translation>Albañiles</translation>
    </message>
</context>
<context>
    <name>ui::StageBar</name>
    <message>
        <source>To the stage before</source>
        <translation>A la etapa anterior</translation>
    </message>
    <message>
        <source>To the next stage</source>
        <translation>A la etapa siguiente</translation>
    </message>
    <message>
        <source>Day of the works</source>
        <translation>Día de la obra</translation>
    </message>
    <message>
        <source>Shows the pit as it stands on that day; at the far end the tank is finished</source>
        <translation>Muestra la excavación como está ese día; al final del todo, el tanque está terminado</translation>
    </message>
    <message>
        <source>&amp;Building</source>
        <translation>&amp;Construcción</translation>
    </message>
    <message>
        <source>finished tank</source>
        <translation>tanque terminado</translation>
    </message>
</context>
<context>
    <name>ui::SurveyTable</name>
    <message>
        <source>East</source>
        <translation>Este</translation>
    </message>
    <message>
        <source>North</source>
        <translation>Norte</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Altura</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>y %1 más</translation>
    </message>
    <message>
        <source>Spot heights</source>
        <translation>Cotas</translation>
    </message>
    <message>
        <source>Add a point</source>
        <translation>Agregar un punto</translation>
    </message>
    <message>
        <source>Remove points</source>
        <translation>Quitar puntos</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation>Pegar</translation>
    </message>
    <message>
        <source>Read a table…</source>
        <translation>Leer una tabla…</translation>
    </message>
    <message>
        <source>Reading the table</source>
        <translation>Leyendo la tabla</translation>
    </message>
    <message>
        <source>Nothing has changed.</source>
        <translation>Nada ha cambiado.</translation>
    </message>
    <message>
        <source>Taken off every point: %1 east, %2 north.</source>
        <translation>Restado a cada punto: %1 este, %2 norte.</translation>
    </message>
    <message>
        <source>Paste spot heights</source>
        <translation>Pegar cotas</translation>
    </message>
    <message>
        <source>Doubtful spot heights</source>
        <translation>Cotas dudosas</translation>
    </message>
    <message>
        <source>Puts the copied rows in place of all points: east, north, height, in metres</source>
        <translation>Pone las filas copiadas en lugar de todos los puntos: este, norte, altura, en metros</translation>
    </message>
    <message>
        <source>The tank stood outside the survey and was moved to its middle: %1 east, %2 north.</source>
        <translation>El tanque estaba fuera del terreno medido y se movió a su centro: %1 este, %2 norte.</translation>
    </message>
    <message>
        <source>The numbers were taken as metres.</source>
        <translation>Los números se tomaron como metros.</translation>
    </message>
</context>
<context>
    <name>ui::TaskControls</name>
    <message>
        <source>As usual</source>
        <translation>Como de costumbre</translation>
    </message>
    <message>
        <source>The task starts on this day or later</source>
        <translation>La tarea empieza este día o después</translation>
    </message>
    <message>
        <source>People on the task</source>
        <translation>Personas en la tarea</translation>
    </message>
    <message>
        <source>Forget what was wished for this task</source>
        <translation>Olvidar lo que se deseó para esta tarea</translation>
    </message>
    <message>
        <source>not before</source>
        <translation>no antes del</translation>
    </message>
    <message>
        <source>people</source>
        <translation>personas</translation>
    </message>
    <message>
        <source>Not before</source>
        <translation>No antes del</translation>
    </message>
    <message>
        <source>People on a task</source>
        <translation>Personas en una tarea</translation>
    </message>
    <message>
        <source>Move %1</source>
        <translation>Mover: %1</translation>
    </message>
    <message>
        <source>Task as usual</source>
        <translation>Tarea como de costumbre</translation>
    </message>
    <message>
        <source>Choose a bar to move it or to give it more people.</source>
        <translation>Elija una barra para moverla o para darle más personas.</translation>
    </message>
</context>
<context>
    <name>ui::TextRow</name>
    <message>
        <source>year-month-day</source>
        <translation>año-mes-día</translation>
    </message>
</context>
<context>
    <name>ui::Waiting</name>
    <message>
        <source>Give up</source>
        <translation>Dejar de esperar</translation>
    </message>
    <message>
        <source>Stopping…</source>
        <translation>Deteniendo…</translation>
    </message>
</context>
<context>
    <name>ui::WaterChartsView</name>
    <message>
        <source>Level through the year</source>
        <translation>Nivel en el año</translation>
    </message>
    <message>
        <source>Supply and need</source>
        <translation>Entradas y necesidades</translation>
    </message>
    <message>
        <source>Tank size and beds</source>
        <translation>Tamaño del tanque y camas</translation>
    </message>
    <message>
        <source>Storage</source>
        <translation>Almacenamiento</translation>
    </message>
    <message>
        <source>Water in the tank through the year</source>
        <translation>Agua en el tanque durante el año</translation>
    </message>
    <message>
        <source>Supply and need by month</source>
        <translation>Entradas y necesidades por mes</translation>
    </message>
    <message>
        <source>Years in ten with water all year, by size of the tank and area of the beds</source>
        <translation>Años de cada diez con agua todo el año, según el tamaño del tanque y el área de las camas</translation>
    </message>
    <message>
        <source>Years in ten with water all year, by size of the tank</source>
        <translation>Años de cada diez con agua todo el año, según el tamaño del tanque</translation>
    </message>
</context>
<context>
    <name>ui::WaterPanel</name>
    <message>
        <source>Crop %1</source>
        <translation>Cultivo %1</translation>
    </message>
    <message>
        <source>Ask whether the water lasts</source>
        <translation>Preguntar si alcanzará el agua</translation>
    </message>
    <message>
        <source>Charts</source>
        <translation>Gráficos</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente de agua</translation>
    </message>
    <message>
        <source>Beds and animals</source>
        <translation>Camas y animales</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>Clima</translation>
    </message>
    <message>
        <source>What the tap or spring gives, month by month</source>
        <translation>Lo que da la llave o el manantial, mes por mes</translation>
    </message>
    <message>
        <source>Bucket and watch: time how long a vessel takes to fill, more than three times</source>
        <translation>Balde y reloj: mida cuánto tarda en llenarse un recipiente, más de tres veces</translation>
    </message>
    <message>
        <source>Use the medians as flows</source>
        <translation>Usar las medianas como caudales</translation>
    </message>
    <message>
        <source>Beds</source>
        <translation>Camas de cultivo</translation>
    </message>
    <message>
        <source>Animals</source>
        <translation>Animales</translation>
    </message>
    <message>
        <source>Crops of your own, beside the table of crops</source>
        <translation>Cultivos propios, además de la tabla de cultivos</translation>
    </message>
    <message>
        <source>Means of many years, month by month</source>
        <translation>Promedios de muchos años, mes por mes</translation>
    </message>
    <message>
        <source>Read a daily record…</source>
        <translation>Leer un registro diario…</translation>
    </message>
    <message>
        <source>Take the record out</source>
        <translation>Quitar el registro</translation>
    </message>
    <message>
        <source>Enter the latitude and the weather, and the answer stands here.</source>
        <translation>Anote la latitud y el clima, y aquí estará la respuesta.</translation>
    </message>
    <message>
        <source>Will the water last the dry season?</source>
        <translation>¿Alcanzará el agua en la época seca?</translation>
    </message>
    <message>
        <source>Enter the weather, and the answer stands here.</source>
        <translation>Anote el clima, y aquí estará la respuesta.</translation>
    </message>
    <message>
        <source>Enter the latitude, and the answer stands here.</source>
        <translation>Anote la latitud, y aquí estará la respuesta.</translation>
    </message>
</context>
<context>
    <name>ui::WorksPanel</name>
    <message>
        <source>Who does what, when, and can each coat be finished in a day?</source>
        <translation>¿Quién hace qué, cuándo, y se puede terminar cada capa en un día?</translation>
    </message>
    <message>
        <source>Plan labour and dates</source>
        <translation>Planear mano de obra y fechas</translation>
    </message>
    <message>
        <source>Bars of all tasks over the days</source>
        <translation>Barras de todas las tareas a lo largo de los días</translation>
    </message>
    <message>
        <source>Dates</source>
        <translation>Fechas</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personas</translation>
    </message>
    <message>
        <source>People on each day</source>
        <translation>Personas cada día</translation>
    </message>
    <message>
        <source>Days on which nobody works, besides the rest day of the week</source>
        <translation>Días en que nadie trabaja, además del día de descanso semanal</translation>
    </message>
    <message>
        <source>Wishes for single tasks: dragging a bar makes one</source>
        <translation>Deseos para tareas sueltas: al arrastrar una barra se anota uno</translation>
    </message>
    <message>
        <source>Coats in one go</source>
        <translation>Capas de una sola vez</translation>
    </message>
    <message>
        <source>First filling</source>
        <translation>Primer llenado</translation>
    </message>
    <message>
        <source>There is no coat to fill after.</source>
        <translation>No hay capa después de la cual llenar.</translation>
    </message>
    <message>
        <source>Water level and wet walls, day by day</source>
        <translation>Nivel del agua y paredes mojadas, día por día</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>Clima</translation>
    </message>
    <message>
        <source>Enter the weather in the tab Water, and the weeks stand here.</source>
        <translation>Anote el clima en la pestaña Agua, y las semanas estarán aquí.</translation>
    </message>
    <message>
        <source>Chance of undisturbed coats in each week of the year</source>
        <translation>Probabilidad de capas sin contratiempos en cada semana del año</translation>
    </message>
    <message>
        <source>Start so that the coats fall in the best week</source>
        <translation>Empezar de modo que las capas caigan en la mejor semana</translation>
    </message>
    <message>
        <source>Best start</source>
        <translation>Mejor comienzo</translation>
    </message>
    <message>
        <source>Measured on site</source>
        <translation>Medido en la obra</translation>
    </message>
    <message>
        <source>Trial batches: mix one, put it on, measure what it covers</source>
        <translation>Tandas de prueba: mezcle una, colóquela, mida cuánto cubre</translation>
    </message>
    <message>
        <source>Work done and the person-days it took</source>
        <translation>Trabajo hecho y los jornales que llevó</translation>
    </message>
    <message>
        <source>The district&apos;s own rates, person-days for each unit of work</source>
        <translation>Los rendimientos propios del distrito, jornales por cada unidad de trabajo</translation>
    </message>
    <message>
        <source>Change between the records and what is entered</source>
        <translation>Cambiar entre los registros y lo anotado</translation>
    </message>
    <message>
        <source>Records in force</source>
        <translation>Registros en uso</translation>
    </message>
</context>
<context>
    <name>ui::group::GroupView</name>
    <message>
        <source>Blank</source>
        <translation>En blanco</translation>
    </message>
    <message>
        <source>The pit in three dimensions</source>
        <translation>La excavación en tres dimensiones</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>Cabida</translation>
    </message>
    <message>
        <source>Water all year</source>
        <translation>Agua todo el año</translation>
    </message>
    <message>
        <source>Usable</source>
        <translation>Útil</translation>
    </message>
    <message>
        <source>Cement</source>
        <translation>Cemento</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Costo</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>Reproducir</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>1 Size</source>
        <translation>1 Tamaño</translation>
    </message>
    <message>
        <source>2 Options</source>
        <translation>2 Opciones</translation>
    </message>
    <message>
        <source>3 Building</source>
        <translation>3 Construcción</translation>
    </message>
    <message>
        <source>4 Water</source>
        <translation>4 Agua</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Salir</translation>
    </message>
    <message>
        <source>Group view – Tankwright</source>
        <translation>Vista de grupo – Tankwright</translation>
    </message>
    <message>
        <source>%1 of 10</source>
        <comment>years</comment>
        <translation>%1 de 10</translation>
    </message>
    <message>
        <source>%1, in a dry year: %2 in the tank</source>
        <translation>%1, en un año seco: %2 en el tanque</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
</context>
<context>
    <name>ui::group::OptionsStrip</name>
    <message>
        <source>There are no options yet: the tab Options adds them.</source>
        <translation>Todavía no hay opciones: se agregan en la pestaña Opciones.</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>Cabida</translation>
    </message>
    <message>
        <source>Cement</source>
        <translation>Cemento</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Costo</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Trabajo</translation>
    </message>
</context>
<context>
    <name>ui::words</name>
    <message>
        <source>level</source>
        <translation>llano</translation>
    </message>
    <message>
        <source>even slope</source>
        <translation>ladera pareja</translation>
    </message>
    <message>
        <source>surveyed spot heights</source>
        <translation>cotas medidas</translation>
    </message>
    <message>
        <source>stiff clay</source>
        <translation>arcilla dura</translation>
    </message>
    <message>
        <source>firm loam</source>
        <translation>tierra franca firme</translation>
    </message>
    <message>
        <source>sandy</source>
        <translation>arenoso</translation>
    </message>
    <message>
        <source>loose fill</source>
        <translation>relleno suelto</translation>
    </message>
    <message>
        <source>soft and wet</source>
        <translation>blando y húmedo</translation>
    </message>
    <message>
        <source>rock</source>
        <translation>roca</translation>
    </message>
    <message>
        <source>rectangle</source>
        <translation>rectángulo</translation>
    </message>
    <message>
        <source>round</source>
        <translation>redondo</translation>
    </message>
    <message>
        <source>polygon</source>
        <translation>polígono</translation>
    </message>
    <message>
        <source>finished floor</source>
        <translation>piso terminado</translation>
    </message>
    <message>
        <source>rim</source>
        <translation>borde</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>Monday</source>
        <translation>lunes</translation>
    </message>
    <message>
        <source>Tuesday</source>
        <translation>martes</translation>
    </message>
    <message>
        <source>Wednesday</source>
        <translation>miércoles</translation>
    </message>
    <message>
        <source>Thursday</source>
        <translation>jueves</translation>
    </message>
    <message>
        <source>Friday</source>
        <translation>viernes</translation>
    </message>
    <message>
        <source>Saturday</source>
        <translation>sábado</translation>
    </message>
    <message>
        <source>Sunday</source>
        <translation>domingo</translation>
    </message>
    <message>
        <source>Name of the tank as it shall stand on every sheet.</source>
        <translation>Nombre del tanque como debe aparecer en cada hoja.</translation>
    </message>
    <message>
        <source>Village and field where the tank is dug.</source>
        <translation>Pueblo y terreno donde se cava el tanque.</translation>
    </message>
    <message>
        <source>Who made this plan and answers questions about it.</source>
        <translation>Quién hizo este plan y responde preguntas sobre él.</translation>
    </message>
    <message>
        <source>Short name of the money used, for example Rs.</source>
        <translation>Nombre corto de la moneda usada, por ejemplo Bs.</translation>
    </message>
    <message>
        <source>Degrees north of the equator; south is negative. Leave empty if not known.</source>
        <translation>Grados al norte del ecuador; el sur es negativo. Deje vacío si no se sabe.</translation>
    </message>
    <message>
        <source>From a map or a phone, at the tank. Leave empty if not known.</source>
        <translation>De un mapa o un teléfono, en el lugar del tanque. Deje vacío si no se sabe.</translation>
    </message>
    <message>
        <source>How the natural ground lies where the tank is dug, before any levelling.</source>
        <translation>Cómo está el terreno natural donde se cava el tanque, antes de nivelar.</translation>
    </message>
    <message>
        <source>Drop of the natural ground straight downhill over 100 of level distance.</source>
        <translation>Caída del terreno natural ladera abajo por cada 100 de distancia a nivel.</translation>
    </message>
    <message>
        <source>Compass direction in which water would run off: north 0, east 90, south 180.</source>
        <translation>Rumbo hacia donde correría el agua: norte 0, este 90, sur 180.</translation>
    </message>
    <message>
        <source>The weakest soil found in the trial pit down to the pit floor; choose “not known” rather than guess.</source>
        <translation>El suelo más débil hallado en la calicata hasta el fondo de la excavación; elija «no se sabe» antes que adivinar.</translation>
    </message>
    <message>
        <source>Clay in the soil used for plaster, from a jar test. Leave empty if not known.</source>
        <translation>Arcilla en la tierra para el repello, según la prueba del frasco. Deje vacío si no se sabe.</translation>
    </message>
    <message>
        <source>From the ground down to ground water at its highest in the year. Leave empty if not known.</source>
        <translation>Del suelo hasta el agua subterránea en su nivel más alto del año. Deje vacío si no se sabe.</translation>
    </message>
    <message>
        <source>Level distance from the pit edge to the nearest terrace edge or bank downhill.</source>
        <translation>Distancia a nivel de la orilla de la excavación al filo de terraza o barranco más cercano ladera abajo.</translation>
    </message>
    <message>
        <source>Drop of that terrace edge or bank.</source>
        <translation>Altura de ese filo de terraza o barranco.</translation>
    </message>
    <message>
        <source>Whether the pit floor, or part of it, lies on rock.</source>
        <translation>Si el fondo de la excavación, o parte de él, está sobre roca.</translation>
    </message>
    <message>
        <source>Level distance to the nearest house, path or shed that escaping water would reach.</source>
        <translation>Distancia a nivel a la casa, camino o cobertizo más cercano al que llegaría el agua si se escapa.</translation>
    </message>
    <message>
        <source>Whether children who cannot yet swim or climb out live or play within 20 m.</source>
        <translation>Si a menos de 20 m viven o juegan niños que aún no saben nadar ni salir solos.</translation>
    </message>
    <message>
        <source>Clear length of the smallest tank that builders here recommend.</source>
        <translation>Largo interior del tanque más pequeño que recomiendan los constructores de aquí.</translation>
    </message>
    <message>
        <source>Clear width of the smallest tank that builders here recommend.</source>
        <translation>Ancho interior del tanque más pequeño que recomiendan los constructores de aquí.</translation>
    </message>
    <message>
        <source>Clear depth of the smallest tank that builders here recommend.</source>
        <translation>Profundidad interior del tanque más pequeño que recomiendan los constructores de aquí.</translation>
    </message>
    <message>
        <source>Shape of the finished floor seen from above.</source>
        <translation>Forma del piso terminado visto desde arriba.</translation>
    </message>
    <message>
        <source>Whether the clear sizes below are those of the finished floor or of the opening at the rim.</source>
        <translation>Si las medidas interiores de abajo son las del piso terminado o las de la boca en el borde.</translation>
    </message>
    <message>
        <source>Finished inside length that the water touches, plaster to plaster; the pit is dug larger.</source>
        <translation>Largo interior terminado que toca el agua, de repello a repello; la excavación se hace más grande.</translation>
    </message>
    <message>
        <source>Finished inside width that the water touches, plaster to plaster; the pit is dug larger.</source>
        <translation>Ancho interior terminado que toca el agua, de repello a repello; la excavación se hace más grande.</translation>
    </message>
    <message>
        <source>Finished inside diameter that the water touches, plaster to plaster; the pit is dug larger.</source>
        <translation>Diámetro interior terminado que toca el agua, de repello a repello; la excavación se hace más grande.</translation>
    </message>
    <message>
        <source>Corners of the finished inside in plan, anticlockwise, with no corner bent inward.</source>
        <translation>Esquinas del interior terminado en planta, en sentido contrario al reloj, sin esquinas hacia adentro.</translation>
    </message>
    <message>
        <source>Finished floor straight up to the rim; the pit is deeper by the coats and the stone bed.</source>
        <translation>Del piso terminado a plomo hasta el borde; la excavación es más honda por las capas y el lecho de piedra.</translation>
    </message>
    <message>
        <source>How far the wall leans outward for each unit of height: 0 is upright, 0.10 is 1 in 10.</source>
        <translation>Cuánto se abre la pared por cada unidad de altura: 0 es a plomo, 0.10 es 1 en 10.</translation>
    </message>
    <message>
        <source>Rounding of the corners of the clear floor in plan; 0 leaves them sharp.</source>
        <translation>Redondeo de las esquinas del piso interior en planta; 0 las deja vivas.</translation>
    </message>
    <message>
        <source>Height from the overflow level, where water runs out, up to the rim.</source>
        <translation>Altura desde el rebosadero, por donde sale el agua, hasta el borde.</translation>
    </message>
    <message>
        <source>Water left above the finished floor that the outlet cannot draw.</source>
        <translation>Agua que queda sobre el piso terminado y la salida no puede sacar.</translation>
    </message>
    <message>
        <source>Thickness of the compacted stone under the floor; there is none behind the walls.</source>
        <translation>Espesor de la piedra apisonada bajo el piso; detrás de las paredes no hay.</translation>
    </message>
    <message>
        <source>Volume of loose soil, sand and cement that makes one volume of plaster on the wall.</source>
        <translation>Volumen de tierra, arena y cemento sueltos que da un volumen de repello en la pared.</translation>
    </message>
    <message>
        <source>Extra plaster for what falls, sticks to tools or sets before it is placed.</source>
        <translation>Repello de más por lo que cae, se pega a las herramientas o fragua antes de colocarse.</translation>
    </message>
    <message>
        <source>Extra for hollows in the dug faces, on the stone bed and on coat 1 alone.</source>
        <translation>De más por los huecos de las caras cavadas, solo en el lecho de piedra y en la capa 1.</translation>
    </message>
    <message>
        <source>Weight printed on the cement bag sold nearby.</source>
        <translation>Peso impreso en la bolsa de cemento que se vende cerca.</translation>
    </message>
    <message>
        <source>Weight of cement poured loose into a gauge box.</source>
        <translation>Peso del cemento vertido suelto en un cajón de medida.</translation>
    </message>
    <message>
        <source>Finished thickness of the coat, measured square to the face.</source>
        <translation>Espesor terminado de la capa, medido a escuadra con la cara.</translation>
    </message>
    <message>
        <source>Parts of sieved soil in the mix, by loose volume.</source>
        <translation>Partes de tierra cernida en la mezcla, en volumen suelto.</translation>
    </message>
    <message>
        <source>Parts of sand in the mix, by loose volume.</source>
        <translation>Partes de arena en la mezcla, en volumen suelto.</translation>
    </message>
    <message>
        <source>Parts of cement in the mix, by loose volume.</source>
        <translation>Partes de cemento en la mezcla, en volumen suelto.</translation>
    </message>
    <message>
        <source>Days for which the coat is kept under wet sacks, rest days too.</source>
        <translation>Días que la capa se mantiene bajo costales mojados, también los de descanso.</translation>
    </message>
    <message>
        <source>Rounded fillet between clear floor and wall; 0 leaves a sharp corner.</source>
        <translation>Media caña entre piso interior y pared; 0 deja el rincón vivo.</translation>
    </message>
    <message>
        <source>Width of the plaster collar let into the ground around the top, outward of the coats; 0 for none.</source>
        <translation>Ancho del collar de repello metido en el suelo alrededor de la boca, por fuera de las capas; 0 si no hay.</translation>
    </message>
    <message>
        <source>Thickness of that collar; 0 for none.</source>
        <translation>Espesor de ese collar; 0 si no hay.</translation>
    </message>
    <message>
        <source>Share of soil and sand that stays on the sieve and cannot be used.</source>
        <translation>Parte de la tierra y la arena que queda en la zaranda y no sirve.</translation>
    </message>
    <message>
        <source>How much more room damp sand takes than dry sand.</source>
        <translation>Cuánto más ocupa la arena húmeda que la seca.</translation>
    </message>
    <message>
        <source>Volume of loose stone to buy for one volume of compacted bed.</source>
        <translation>Volumen de piedra suelta que hay que comprar por un volumen de lecho apisonado.</translation>
    </message>
    <message>
        <source>Water to mix one volume of mortar.</source>
        <translation>Agua para preparar un volumen de mezcla.</translation>
    </message>
    <message>
        <source>Water to keep one unit of plastered face wet for a day.</source>
        <translation>Agua para mantener mojada un día una unidad de cara repellada.</translation>
    </message>
    <message>
        <source>Face that one sack covers once laps are taken off.</source>
        <translation>Cara que cubre un costal, descontados los traslapes.</translation>
    </message>
    <message>
        <source>Sacks beyond those that just cover the face.</source>
        <translation>Costales además de los que justo cubren la cara.</translation>
    </message>
    <message>
        <source>Measure it: fill the box with water from a bottle of known size.</source>
        <translation>Mídalo: llene el cajón con agua de una botella de tamaño conocido.</translation>
    </message>
    <message>
        <source>Measure it: fill the pan level with water from a bottle of known size.</source>
        <translation>Mídala: llene la batea al ras con agua de una botella de tamaño conocido.</translation>
    </message>
    <message>
        <source>Measure it: fill the bucket with water from a bottle of known size.</source>
        <translation>Mídalo: llene el balde con agua de una botella de tamaño conocido.</translation>
    </message>
    <message>
        <source>Soil for such a tank as people reckon it today; shown beside the computed soil, never mixed with it.</source>
        <translation>Tierra para un tanque así como se calcula hoy por costumbre; se muestra junto a la calculada, nunca se mezcla con ella.</translation>
    </message>
    <message>
        <source>Sand for such a tank as people reckon it today; shown beside the computed sand, never mixed with it.</source>
        <translation>Arena para un tanque así como se calcula hoy por costumbre; se muestra junto a la calculada, nunca se mezcla con ella.</translation>
    </message>
    <message>
        <source>Stone for such a tank as people reckon it today; shown beside the computed stone, never mixed with it.</source>
        <translation>Piedra para un tanque así como se calcula hoy por costumbre; se muestra junto a la calculada, nunca se mezcla con ella.</translation>
    </message>
    <message>
        <source>Cement for such a tank as people reckon it today; shown beside the computed cement, never mixed with it.</source>
        <translation>Cemento para un tanque así como se calcula hoy por costumbre; se muestra junto al calculado, nunca se mezcla con él.</translation>
    </message>
    <message>
        <source>Masons, mixers and carriers together on a coat; a coat is placed in one go, within the day.</source>
        <translation>Albañiles, mezcladores y cargadores juntos en una capa; una capa se coloca de una sola vez, dentro del día.</translation>
    </message>
    <message>
        <source>Nobody digs or plasters on this day; wetting goes on.</source>
        <translation>Ese día nadie cava ni repella; se sigue mojando.</translation>
    </message>
    <message>
        <source>Latest start of the first filling, counted in days after the last coat.</source>
        <translation>A más tardar cuándo empezar el primer llenado, en días después de la última capa.</translation>
    </message>
    <message>
        <source>One person&apos;s days to dig and throw out ground as it lies; leave empty to take it from the soil.</source>
        <translation>Días de una persona para cavar y botar tierra en banco; deje vacío para tomarlo del tipo de suelo.</translation>
    </message>
    <message>
        <source>One person&apos;s days to lay and compact the stone bed.</source>
        <translation>Días de una persona para poner y apisonar el lecho de piedra.</translation>
    </message>
    <message>
        <source>One person&apos;s days to plaster one coat, helpers counted.</source>
        <translation>Días de una persona para repellar una capa, contando ayudantes.</translation>
    </message>
    <message>
        <source>One person&apos;s days to mix mortar by hand.</source>
        <translation>Días de una persona para preparar mezcla a mano.</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Título</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Prepared by</source>
        <translation>Preparado por</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Moneda</translation>
    </message>
    <message>
        <source>Latitude</source>
        <translation>Latitud</translation>
    </message>
    <message>
        <source>Height above sea level</source>
        <translation>Altura sobre el nivel del mar</translation>
    </message>
    <message>
        <source>Ground</source>
        <translation>Terreno</translation>
    </message>
    <message>
        <source>Fall of the ground</source>
        <translation>Pendiente del terreno</translation>
    </message>
    <message>
        <source>Downhill direction</source>
        <translation>Rumbo ladera abajo</translation>
    </message>
    <message>
        <source>Soil of the pit</source>
        <translation>Suelo de la excavación</translation>
    </message>
    <message>
        <source>Clay in the soil</source>
        <translation>Arcilla en la tierra</translation>
    </message>
    <message>
        <source>Depth to ground water</source>
        <translation>Profundidad del agua subterránea</translation>
    </message>
    <message>
        <source>Distance to the terrace edge</source>
        <translation>Distancia al filo de la terraza</translation>
    </message>
    <message>
        <source>Height of the terrace edge</source>
        <translation>Altura del filo de la terraza</translation>
    </message>
    <message>
        <source>Rock in the pit floor</source>
        <translation>Roca en el fondo de la excavación</translation>
    </message>
    <message>
        <source>Distance to the nearest house downhill</source>
        <translation>Distancia a la casa más cercana ladera abajo</translation>
    </message>
    <message>
        <source>Small children live within 20 m</source>
        <translation>Viven niños pequeños a menos de 20 m</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>Forma</translation>
    </message>
    <message>
        <source>Clear size measured at</source>
        <translation>Medidas interiores tomadas en</translation>
    </message>
    <message>
        <source>Clear length</source>
        <translation>Largo interior</translation>
    </message>
    <message>
        <source>Clear width</source>
        <translation>Ancho interior</translation>
    </message>
    <message>
        <source>Clear diameter</source>
        <translation>Diámetro interior</translation>
    </message>
    <message>
        <source>Clear outline</source>
        <translation>Contorno interior</translation>
    </message>
    <message>
        <source>Clear depth, floor to rim</source>
        <translation>Profundidad interior, del piso al borde</translation>
    </message>
    <message>
        <source>Batter of the walls</source>
        <translation>Talud de las paredes</translation>
    </message>
    <message>
        <source>Corner radius, clear floor</source>
        <translation>Radio de esquina, piso interior</translation>
    </message>
    <message>
        <source>Freeboard</source>
        <translation>Borde libre</translation>
    </message>
    <message>
        <source>Dead depth</source>
        <translation>Profundidad muerta</translation>
    </message>
    <message>
        <source>Stone bed, compacted</source>
        <translation>Lecho de piedra, apisonado</translation>
    </message>
    <message>
        <source>Loose ingredients per placed plaster</source>
        <translation>Materiales sueltos por repello colocado</translation>
    </message>
    <message>
        <source>Waste</source>
        <translation>Desperdicio</translation>
    </message>
    <message>
        <source>Unevenness of dug faces</source>
        <translation>Irregularidad de las caras cavadas</translation>
    </message>
    <message>
        <source>Cement in a bag</source>
        <translation>Cemento por bolsa</translation>
    </message>
    <message>
        <source>Loose weight of cement</source>
        <translation>Peso suelto del cemento</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Espesor</translation>
    </message>
    <message>
        <source>Soil</source>
        <translation>Tierra</translation>
    </message>
    <message>
        <source>Sand</source>
        <translation>Arena</translation>
    </message>
    <message>
        <source>Cement</source>
        <translation>Cemento</translation>
    </message>
    <message>
        <source>Days under wet sacks</source>
        <translation>Días bajo costales mojados</translation>
    </message>
    <message>
        <source>Cove radius, floor to wall</source>
        <translation>Radio de la media caña, piso y pared</translation>
    </message>
    <message>
        <source>Rim collar, width</source>
        <translation>Collar del borde, ancho</translation>
    </message>
    <message>
        <source>Rim collar, thickness</source>
        <translation>Collar del borde, espesor</translation>
    </message>
    <message>
        <source>Loss in sieving</source>
        <translation>Pérdida al cernir</translation>
    </message>
    <message>
        <source>Bulking of damp sand</source>
        <translation>Abultamiento de la arena húmeda</translation>
    </message>
    <message>
        <source>Loose stone per compacted bed</source>
        <translation>Piedra suelta por lecho apisonado</translation>
    </message>
    <message>
        <source>Mixing water</source>
        <translation>Agua de mezcla</translation>
    </message>
    <message>
        <source>Curing water</source>
        <translation>Agua de curado</translation>
    </message>
    <message>
        <source>Face covered by one sack</source>
        <translation>Cara que cubre un costal</translation>
    </message>
    <message>
        <source>Spare sacks</source>
        <translation>Costales de reserva</translation>
    </message>
    <message>
        <source>Gauge box holds</source>
        <translation>Cabida del cajón de medida</translation>
    </message>
    <message>
        <source>Pan holds</source>
        <translation>Cabida de la batea</translation>
    </message>
    <message>
        <source>Bucket holds</source>
        <translation>Cabida del balde</translation>
    </message>
    <message>
        <source>Customary bill: soil</source>
        <translation>Lista acostumbrada: tierra</translation>
    </message>
    <message>
        <source>Customary bill: sand</source>
        <translation>Lista acostumbrada: arena</translation>
    </message>
    <message>
        <source>Customary bill: stone</source>
        <translation>Lista acostumbrada: piedra</translation>
    </message>
    <message>
        <source>Customary bill: cement</source>
        <translation>Lista acostumbrada: cemento</translation>
    </message>
    <message>
        <source>Smallest recommended clear length</source>
        <translation>Largo interior mínimo recomendado</translation>
    </message>
    <message>
        <source>Smallest recommended clear width</source>
        <translation>Ancho interior mínimo recomendado</translation>
    </message>
    <message>
        <source>Smallest recommended clear depth</source>
        <translation>Profundidad interior mínima recomendada</translation>
    </message>
    <message>
        <source>Diggers</source>
        <translation>Cavadores</translation>
    </message>
    <message>
        <source>People on a coat</source>
        <translation>Personas en una capa</translation>
    </message>
    <message>
        <source>Weekly rest day</source>
        <translation>Día de descanso semanal</translation>
    </message>
    <message>
        <source>Start filling within</source>
        <translation>Empezar a llenar dentro de</translation>
    </message>
    <message>
        <source>Digging</source>
        <translation>Cavar</translation>
    </message>
    <message>
        <source>Laying the stone bed</source>
        <translation>Poner el lecho de piedra</translation>
    </message>
    <message>
        <source>Plastering a coat</source>
        <translation>Repellar una capa</translation>
    </message>
    <message>
        <source>Mixing mortar</source>
        <translation>Preparar mezcla</translation>
    </message>
    <message>
        <source>The tank is smaller than the smallest one that builders recommend: %1 long, %2 wide and %3 deep (clear), which is %4 to the rim.</source>
        <translation>El tanque es más pequeño que el menor que recomiendan los constructores: %1 de largo, %2 de ancho y %3 de hondo (interiores), o sea %4 hasta el borde.</translation>
    </message>
    <message>
        <source>%1 parts of sand to 1 part of soil would reach it.</source>
        <translation>Se llegaría con %1 partes de arena por 1 parte de tierra.</translation>
    </message>
    <message>
        <source>%1: clay is only %2 of its soil and sand together; %3 to %4 is wanted, or the plaster crumbles.</source>
        <translation>%1: la arcilla es solo %2 de su tierra y arena juntas; se quiere de %3 a %4, o el repello se desmorona.</translation>
    </message>
    <message>
        <source>%1: clay is %2 of its soil and sand together; %3 to %4 is wanted, or the plaster shrinks and cracks.</source>
        <translation>%1: la arcilla es %2 de su tierra y arena juntas; se quiere de %3 a %4, o el repello se encoge y se raja.</translation>
    </message>
    <message>
        <source>%1: clay is only %2 of its soil and sand together, and even the soil alone has less than the %3 wanted. Look for a soil with more clay.</source>
        <translation>%1: la arcilla es solo %2 de su tierra y arena juntas, y aun la tierra sola tiene menos del %3 que se quiere. Busque una tierra con más arcilla.</translation>
    </message>
    <message>
        <source>The clay in the soil is not known, so the mix cannot be judged. Do a jar test and enter its result.</source>
        <translation>No se sabe cuánta arcilla tiene la tierra, así que no se puede juzgar la mezcla. Haga la prueba del frasco y anote el resultado.</translation>
    </message>
    <message>
        <source>The soil of the pit is not known. Digging is reckoned as for firm loam, and the walls cannot be called safe.</source>
        <translation>No se conoce el suelo de la excavación. El cavado se calcula como en tierra franca firme, y no se puede decir que las paredes sean seguras.</translation>
    </message>
    <message>
        <source>%1 is kept wet for %2. Ordinary cement practice is at least %3; shorter curing is reported from tanks of this kind, and leaves the plaster weaker.</source>
        <translation>%1 se mantiene mojada %2. La práctica común con cemento es al menos %3; en tanques de este tipo se informa de curados más cortos, que dejan el repello más débil.</translation>
    </message>
    <message>
        <source>The last coat is kept wet for %1, but filling shall start within %2 of placing it. Keep the walls above the water under wet sacks after filling has begun.</source>
        <translation>La última capa se mantiene mojada %1, pero el llenado debe empezar dentro de %2 de colocarla. Mantenga bajo costales mojados las paredes sobre el agua después de empezar a llenar.</translation>
    </message>
    <message>
        <source>The pit is %1 deep. From %2 on a ladder must stand in it while anyone works there. Local codes and licensed practice come first.</source>
        <translation>La excavación tiene %1 de hondo. Desde %2 debe haber una escalera dentro mientras alguien trabaje allí. Las normas locales y el ejercicio profesional autorizado van primero.</translation>
    </message>
    <message>
        <source>The pit is %1 deep. From %2 on its walls must be held against cave-in: slope or step them back, or shore them, and let a competent person look at them each day. Local codes and licensed practice come first.</source>
        <translation>La excavación tiene %1 de hondo. Desde %2 hay que proteger sus paredes contra derrumbes: deles talud o gradas, o entíbelas, y que una persona competente las revise cada día. Las normas locales y el ejercicio profesional autorizado van primero.</translation>
    </message>
    <message>
        <source>The pit is %1 deep, more than the %2 that this program allows to be dug by hand. Have an engineer design it, or make the tank shallower and wider.</source>
        <translation>La excavación tiene %1 de hondo, más que los %2 que este programa admite cavar a mano. Encargue el diseño a un ingeniero, o haga el tanque menos hondo y más ancho.</translation>
    </message>
    <message>
        <source>The mixes and thicknesses entered need %1 times the cement of the customary bill by exact shells, %2 times by area times thickness. Decide which to trust, thickness, mix or cement; the others follow from your choice.</source>
        <translation>Las mezclas y los espesores anotados necesitan %1 veces el cemento de la lista acostumbrada por capas exactas, y %2 veces por área por espesor. Decida en qué confiar, espesor, mezcla o cemento; lo demás sigue de su elección.</translation>
    </message>
    <message>
        <source>The customary bill has %1 parts of soil to 1 part of sand; the mixes entered need %2. Both cannot be right.</source>
        <translation>La lista acostumbrada tiene %1 partes de tierra por 1 parte de arena; las mezclas anotadas necesitan %2. No pueden ser ciertas las dos.</translation>
    </message>
    <message>
        <source>Digging takes %1 by published rate norms and %2 by local practice. Check which fits your diggers before you promise dates.</source>
        <translation>Cavar lleva %1 según normas publicadas y %2 según la práctica local. Vea cuál vale para sus cavadores antes de prometer fechas.</translation>
    </message>
    <message>
        <source>The file&apos;s entry “%1” is not known to this version. It is kept and not used.</source>
        <translation>Esta versión no conoce la entrada «%1» del archivo. Se conserva y no se usa.</translation>
    </message>
    <message>
        <source>Stone bed</source>
        <translation>Lecho de piedra</translation>
    </message>
    <message>
        <source>Cove</source>
        <translation>Media caña</translation>
    </message>
    <message>
        <source>Rim collar</source>
        <translation>Collar del borde</translation>
    </message>
    <message>
        <source>Dug pit</source>
        <translation>Excavación</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>Person for scale</source>
        <translation>Persona para comparar</translation>
    </message>
    <message>
        <source>Bags of cement</source>
        <translation>Bolsas de cemento</translation>
    </message>
    <message>
        <source>Soil, sieved</source>
        <translation>Tierra, cernida</translation>
    </message>
    <message>
        <source>Stone, loose</source>
        <translation>Piedra, suelta</translation>
    </message>
    <message>
        <source>Water, all together</source>
        <translation>Agua, en total</translation>
    </message>
    <message>
        <source>Water for mixing</source>
        <translation>Agua para mezclar</translation>
    </message>
    <message>
        <source>Water for wetting</source>
        <translation>Agua para mojar</translation>
    </message>
    <message>
        <source>Sacks to keep wet</source>
        <translation>Costales para mantener mojado</translation>
    </message>
    <message>
        <source>Dig the pit</source>
        <translation>Cavar</translation>
    </message>
    <message>
        <source>Lay and compact the stone bed</source>
        <translation>Poner y apisonar el lecho de piedra</translation>
    </message>
    <message>
        <source>Keep the coats wet</source>
        <translation>Mantener mojadas las capas</translation>
    </message>
    <message>
        <source>Start filling no later than</source>
        <translation>Empezar a llenar a más tardar</translation>
    </message>
    <message>
        <source>labourers</source>
        <translation>peones</translation>
    </message>
    <message>
        <source>masons and helpers</source>
        <translation>albañiles y ayudantes</translation>
    </message>
    <message>
        <source>clear length</source>
        <translation>largo interior</translation>
    </message>
    <message>
        <source>clear width</source>
        <translation>ancho interior</translation>
    </message>
    <message>
        <source>clear diameter</source>
        <translation>diámetro interior</translation>
    </message>
    <message>
        <source>clear depth</source>
        <translation>profundidad interior</translation>
    </message>
    <message>
        <source>pit length</source>
        <translation>largo de la excavación</translation>
    </message>
    <message>
        <source>pit width</source>
        <translation>ancho de la excavación</translation>
    </message>
    <message>
        <source>pit diameter</source>
        <translation>diámetro de la excavación</translation>
    </message>
    <message>
        <source>pit depth</source>
        <translation>profundidad de la excavación</translation>
    </message>
    <message>
        <source>Pit floor</source>
        <translation>Fondo de la excavación</translation>
    </message>
    <message>
        <source>Top of stone bed</source>
        <translation>Cara del lecho de piedra</translation>
    </message>
    <message>
        <source>Overflow level</source>
        <translation>Nivel del rebosadero</translation>
    </message>
    <message>
        <source>Rim</source>
        <translation>Borde</translation>
    </message>
    <message>
        <source>pit corner at ground</source>
        <translation>esquina de la excavación a ras de suelo</translation>
    </message>
    <message>
        <source>offset peg, clear of the pit</source>
        <translation>estaca apartada, fuera de la excavación</translation>
    </message>
    <message>
        <source>pit corner at floor</source>
        <translation>esquina de la excavación en el fondo</translation>
    </message>
    <message>
        <source>centre</source>
        <translation>centro</translation>
    </message>
    <message>
        <source>centre of the rounded corner</source>
        <translation>centro de la esquina redondeada</translation>
    </message>
    <message>
        <source>mark for the right angle</source>
        <translation>marca para la escuadra</translation>
    </message>
    <message>
        <source>side</source>
        <translation>lado</translation>
    </message>
    <message>
        <source>diagonal</source>
        <translation>diagonal</translation>
    </message>
    <message>
        <source>radius</source>
        <translation>radio</translation>
    </message>
    <message>
        <source>3-4-5 triangle</source>
        <translation>triángulo 3-4-5</translation>
    </message>
    <message>
        <source>site</source>
        <translation>lugar</translation>
    </message>
    <message>
        <source>tank</source>
        <translation>tanque</translation>
    </message>
    <message>
        <source>lining</source>
        <translation>revestimiento</translation>
    </message>
    <message>
        <source>water balance</source>
        <translation>balance de agua</translation>
    </message>
    <message>
        <source>labour and dates</source>
        <translation>mano de obra y fechas</translation>
    </message>
    <message>
        <source>prices and cost</source>
        <translation>precios y costo</translation>
    </message>
    <message>
        <source>options side by side</source>
        <translation>opciones lado a lado</translation>
    </message>
    <message>
        <source>%1 bag</source>
        <translation>%1 bolsa</translation>
    </message>
    <message>
        <source>Coat %1</source>
        <translation>Capa %1</translation>
    </message>
    <message>
        <source>Place coat %1</source>
        <translation>Colocar la capa %1</translation>
    </message>
    <message>
        <source>Keep coat %1 wet</source>
        <translation>Mantener mojada la capa %1</translation>
    </message>
    <message>
        <source>Top of coat %1</source>
        <translation>Cara de la capa %1</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>no se puede leer</translation>
    </message>
    <message>
        <source>cannot be written; what was there before is untouched</source>
        <translation>no se puede escribir; lo que había antes queda intacto</translation>
    </message>
    <message>
        <source>is too large, in bytes</source>
        <translation>es demasiado grande, en bytes</translation>
    </message>
    <message>
        <source>is not JSON from this line and column on</source>
        <translation>no es JSON desde esta línea y columna</translation>
    </message>
    <message>
        <source>has too many levels of brackets</source>
        <translation>tiene demasiados niveles de corchetes</translation>
    </message>
    <message>
        <source>is not UTF-8 text from this line and column on</source>
        <translation>no es texto UTF-8 desde esta línea y columna</translation>
    </message>
    <message>
        <source>is not a Tankwright project</source>
        <translation>no es un proyecto de Tankwright</translation>
    </message>
    <message>
        <source>is of a version that this program does not know</source>
        <translation>es de una versión que este programa no conoce</translation>
    </message>
    <message>
        <source>is missing</source>
        <translation>falta</translation>
    </message>
    <message>
        <source>is of the wrong kind</source>
        <translation>es de un tipo equivocado</translation>
    </message>
    <message>
        <source>is not a finite number</source>
        <translation>no es un número finito</translation>
    </message>
    <message>
        <source>is outside the allowed range</source>
        <translation>está fuera del rango permitido</translation>
    </message>
    <message>
        <source>is not one of the choices</source>
        <translation>no es una de las opciones</translation>
    </message>
    <message>
        <source>is too long, in bytes of UTF-8</source>
        <translation>es demasiado largo, en bytes de UTF-8</translation>
    </message>
    <message>
        <source>is not a calendar date written year-month-day</source>
        <translation>no es una fecha escrita año-mes-día</translation>
    </message>
    <message>
        <source>is given twice</source>
        <translation>está dos veces</translation>
    </message>
    <message>
        <source>has too few entries</source>
        <translation>tiene muy pocas entradas</translation>
    </message>
    <message>
        <source>has too many entries</source>
        <translation>tiene demasiadas entradas</translation>
    </message>
    <message>
        <source>runs clockwise; list the corners anticlockwise</source>
        <translation>va en el sentido del reloj; anote las esquinas en sentido contrario</translation>
    </message>
    <message>
        <source>touches or crosses itself</source>
        <translation>se toca o se cruza a sí mismo</translation>
    </message>
    <message>
        <source>is bent inward at this corner; every corner must point outward</source>
        <translation>se dobla hacia adentro en esta esquina; todas deben apuntar hacia afuera</translation>
    </message>
    <message>
        <source>puts the overflow level at or below the clear floor; it must be less than the clear depth</source>
        <translation>pone el rebosadero en el piso interior o más abajo; debe ser menor que la profundidad interior</translation>
    </message>
    <message>
        <source>reaches the overflow level; it must be less than the clear depth without the freeboard</source>
        <translation>llega al rebosadero; debe ser menor que la profundidad interior sin el borde libre</translation>
    </message>
    <message>
        <source>make a lining thicker than the clear inside of the tank</source>
        <translation>hacen un revestimiento más grueso que el interior del tanque</translation>
    </message>
    <message>
        <source>leaves no clear floor: the size at the rim is too small for this depth and batter</source>
        <translation>no deja piso interior: la medida en el borde es muy pequeña para esta profundidad y este talud</translation>
    </message>
    <message>
        <source>does not fit into the corners of the clear floor</source>
        <translation>no cabe en las esquinas del piso interior</translation>
    </message>
    <message>
        <source>is too small: with this batter the corners would vanish at the floor</source>
        <translation>es muy pequeño: con este talud las esquinas desaparecerían en el piso</translation>
    </message>
    <message>
        <source>does not fit between the clear floor and the rim</source>
        <translation>no cabe entre el piso interior y el borde</translation>
    </message>
    <message>
        <source>has neither soil nor sand; give at least one of them some parts</source>
        <translation>no tiene ni tierra ni arena; dé partes al menos a una de ellas</translation>
    </message>
    <message>
        <source>leaves no pit floor to stand on</source>
        <translation>no deja fondo de excavación donde pararse</translation>
    </message>
    <message>
        <source>is not known to this version; it is kept and not used</source>
        <translation>no se conoce en esta versión; se conserva y no se usa</translation>
    </message>
    <message>
        <source>The project file</source>
        <translation>El archivo del proyecto</translation>
    </message>
    <message>
        <source>Format mark</source>
        <translation>Marca del formato</translation>
    </message>
    <message>
        <source>Version of the format</source>
        <translation>Versión del formato</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Spot heights</source>
        <translation>Cotas</translation>
    </message>
    <message>
        <source>Terrace edge</source>
        <translation>Filo de la terraza</translation>
    </message>
    <message>
        <source>Tank</source>
        <translation>Tanque</translation>
    </message>
    <message>
        <source>Lining</source>
        <translation>Revestimiento</translation>
    </message>
    <message>
        <source>Coats</source>
        <translation>Capas</translation>
    </message>
    <message>
        <source>Customary bill</source>
        <translation>Lista acostumbrada</translation>
    </message>
    <message>
        <source>Recommended by builders</source>
        <translation>Recomendado por los constructores</translation>
    </message>
    <message>
        <source>Labour and dates</source>
        <translation>Mano de obra y fechas</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>un número</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>un número entero</translation>
    </message>
    <message>
        <source>text</source>
        <translation>texto</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>una lista</translation>
    </message>
    <message>
        <source>a group in braces</source>
        <translation>un grupo entre llaves</translation>
    </message>
    <message>
        <source>all corners pointing outward</source>
        <translation>todas las esquinas hacia afuera</translation>
    </message>
    <message>
        <source>corners listed anticlockwise</source>
        <translation>esquinas en sentido contrario al reloj</translation>
    </message>
    <message>
        <source>no corner given twice, no sides crossing</source>
        <translation>ninguna esquina repetida, ningún lado cruzado</translation>
    </message>
    <message>
        <source>%1, entry %2</source>
        <translation>%1, entrada %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 in the file, %2</source>
        <translation>%1 en el archivo, %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 %2.</source>
        <translation>%1 %2.</translation>
    </message>
    <message>
        <source>%1 %2: found %3.</source>
        <translation>%1 %2: se halló %3.</translation>
    </message>
    <message>
        <source>%1 %2: allowed %3.</source>
        <translation>%1 %2: se permite %3.</translation>
    </message>
    <message>
        <source>%1 %2: found %3; allowed %4.</source>
        <translation>%1 %2: se halló %3; se permite %4.</translation>
    </message>
    <message>
        <source>%1 or more</source>
        <translation>%1 o más</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>hasta %1</translation>
    </message>
    <message>
        <source>published</source>
        <translation>publicado</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>práctica común, sin fuente</translation>
    </message>
    <message>
        <source>from memory, to be verified</source>
        <translation>de memoria, por verificar</translation>
    </message>
    <message>
        <source>this program&apos;s proposal, to be changed where practice differs</source>
        <translation>propuesta de este programa, para cambiar donde la práctica sea otra</translation>
    </message>
    <message>
        <source>entered or fixed by the design</source>
        <translation>anotado o fijado por el diseño</translation>
    </message>
    <message>
        <source>measured or chosen on site</source>
        <translation>medido o elegido en el lugar</translation>
    </message>
    <message>
        <source>plane and solid geometry; the prismoidal formula is exact for a straight batter</source>
        <translation>geometría del plano y del espacio; la fórmula del prismoide es exacta con talud recto</translation>
    </message>
    <message>
        <source>this program&apos;s proposal; change it to suit the district</source>
        <translation>propuesta de este programa; cámbiela según el distrito</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Cuidado</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Alto</translation>
    </message>
    <message>
        <source>Allowed: %1.</source>
        <translation>Permitido: %1.</translation>
    </message>
    <message>
        <source>Source of the default: %1.</source>
        <translation>Fuente del valor inicial: %1.</translation>
    </message>
    <message>
        <source>ft</source>
        <translation>pie</translation>
    </message>
    <message>
        <source>ft²</source>
        <translation>pie²</translation>
    </message>
    <message>
        <source>ft³</source>
        <translation>pie³</translation>
    </message>
    <message>
        <source>kg/ft³</source>
        <translation>kg/pie³</translation>
    </message>
    <message>
        <source>L/ft³</source>
        <translation>L/pie³</translation>
    </message>
    <message>
        <source>L/ft² per day</source>
        <translation>L/pie² por día</translation>
    </message>
    <message>
        <source>person-days per 100 ft³</source>
        <translation>jornales por 100 pie³</translation>
    </message>
    <message>
        <source>person-days per 100 ft²</source>
        <translation>jornales por 100 pie²</translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>m²</source>
        <translation>m²</translation>
    </message>
    <message>
        <source>m³</source>
        <translation>m³</translation>
    </message>
    <message>
        <source>L</source>
        <translation>L</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>days</source>
        <translation>días</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>horas</translation>
    </message>
    <message>
        <source>people</source>
        <translation>personas</translation>
    </message>
    <message>
        <source>person-days</source>
        <translation>jornales</translation>
    </message>
    <message>
        <source>parts</source>
        <translation>partes</translation>
    </message>
    <message>
        <source>kg/m³</source>
        <translation>kg/m³</translation>
    </message>
    <message>
        <source>L/m³</source>
        <translation>L/m³</translation>
    </message>
    <message>
        <source>L/m² per day</source>
        <translation>L/m² por día</translation>
    </message>
    <message>
        <source>person-days per m³</source>
        <translation>jornales por m³</translation>
    </message>
    <message>
        <source>person-days per m²</source>
        <translation>jornales por m²</translation>
    </message>
    <message>
        <source>%1 day</source>
        <translation>%1 día</translation>
    </message>
    <message>
        <source>%1 hour</source>
        <translation>%1 hora</translation>
    </message>
    <message>
        <source>%1 person</source>
        <translation>%1 persona</translation>
    </message>
    <message>
        <source>%1 person-day</source>
        <translation>%1 jornal</translation>
    </message>
    <message>
        <source>%1 part</source>
        <translation>%1 parte</translation>
    </message>
    <message numerus="yes">
        <source>%1 days</source>
        <translation>
            <numerusform>%1 día</numerusform>
            <numerusform>%1 días</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 hours</source>
        <translation>
            <numerusform>%1 hora</numerusform>
            <numerusform>%1 horas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 people</source>
        <translation>
            <numerusform>%1 persona</numerusform>
            <numerusform>%1 personas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 person-days</source>
        <translation>
            <numerusform>%1 jornal</numerusform>
            <numerusform>%1 jornales</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 parts</source>
        <translation>
            <numerusform>%1 parte</numerusform>
            <numerusform>%1 partes</numerusform>
        </translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation>%1 o %2</translation>
    </message>
    <message>
        <source>Not in the project, so not in the plan: %1.</source>
        <translation>No está en el proyecto, así que tampoco en el plan: %1.</translation>
    </message>
    <message>
        <source>%1 must be placed in one go, within the day. People entered for it: %2; needed: %3.</source>
        <translation>%1 debe colocarse de una sola vez, dentro del día. Personas anotadas: %2; necesarias: %3.</translation>
    </message>
    <message>
        <source>%1 %2: %3.</source>
        <translation>%1 %2: %3.</translation>
    </message>
    <message numerus="yes">
        <source>%1 bags</source>
        <translation>
            <numerusform>%1 bolsa</numerusform>
            <numerusform>%1 bolsas</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 (draft)</source>
        <translation>%1 (borrador)</translation>
    </message>
    <message>
        <source>end of the rounded corner&apos;s arc</source>
        <translation>fin del arco de la esquina redondeada</translation>
    </message>
    <message>
        <source>watering can or bucket</source>
        <translation>regadera o balde</translation>
    </message>
    <message>
        <source>hose</source>
        <translation>manguera</translation>
    </message>
    <message>
        <source>furrows</source>
        <translation>surcos</translation>
    </message>
    <message>
        <source>sprinkler</source>
        <translation>aspersor</translation>
    </message>
    <message>
        <source>drip lines</source>
        <translation>cintas de goteo</translation>
    </message>
    <message>
        <source>cattle</source>
        <translation>res (ganado vacuno)</translation>
    </message>
    <message>
        <source>cow in milk</source>
        <translation>vaca en leche</translation>
    </message>
    <message>
        <source>buffalo</source>
        <translation>búfalo</translation>
    </message>
    <message>
        <source>horse or mule</source>
        <translation>caballo o mula</translation>
    </message>
    <message>
        <source>donkey</source>
        <translation>burro</translation>
    </message>
    <message>
        <source>goat or sheep</source>
        <translation>cabra u oveja</translation>
    </message>
    <message>
        <source>pig</source>
        <translation>cerdo</translation>
    </message>
    <message>
        <source>hen or other poultry</source>
        <translation>gallina u otra ave</translation>
    </message>
    <message>
        <source>monthly means</source>
        <translation>promedio mensual</translation>
    </message>
    <message>
        <source>daily record</source>
        <translation>registro diario</translation>
    </message>
    <message>
        <source>Penman-Monteith</source>
        <translation>Penman-Monteith</translation>
    </message>
    <message>
        <source>Hargreaves</source>
        <translation>Hargreaves</translation>
    </message>
    <message>
        <source>leave the year out</source>
        <translation>dejar fuera el año</translation>
    </message>
    <message>
        <source>fill in from the nearest year</source>
        <translation>completar con el año más cercano</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente de agua</translation>
    </message>
    <message>
        <source>Months of the source</source>
        <translation>Meses de la fuente de agua</translation>
    </message>
    <message>
        <source>Readings of the source</source>
        <translation>Mediciones de la fuente de agua</translation>
    </message>
    <message>
        <source>Roof</source>
        <translation>Techo</translation>
    </message>
    <message>
        <source>Ground led to the tank</source>
        <translation>Terreno que da agua al tanque</translation>
    </message>
    <message>
        <source>Losses</source>
        <translation>Pérdidas</translation>
    </message>
    <message>
        <source>Beds</source>
        <translation>Camas de cultivo</translation>
    </message>
    <message>
        <source>Animals</source>
        <translation>Animales</translation>
    </message>
    <message>
        <source>Own crops</source>
        <translation>Cultivos propios</translation>
    </message>
    <message>
        <source>Climate</source>
        <translation>Clima</translation>
    </message>
    <message>
        <source>Months of the climate</source>
        <translation>Meses del clima</translation>
    </message>
    <message>
        <source>Daily record</source>
        <translation>Registro diario</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>Medición %1</translation>
    </message>
    <message>
        <source>Bed %1</source>
        <translation>Cama %1</translation>
    </message>
    <message>
        <source>Animals %1</source>
        <translation>Animales %1</translation>
    </message>
    <message>
        <source>Own crop %1</source>
        <translation>Cultivo propio %1</translation>
    </message>
    <message>
        <source>Source in %1</source>
        <translation>Fuente de agua en %1</translation>
    </message>
    <message>
        <source>Climate of %1</source>
        <translation>Clima de %1</translation>
    </message>
    <message>
        <source>date</source>
        <translation>fecha</translation>
    </message>
    <message>
        <source>rain</source>
        <translation>lluvia</translation>
    </message>
    <message>
        <source>lowest temperature</source>
        <translation>temperatura mínima</translation>
    </message>
    <message>
        <source>highest temperature</source>
        <translation>temperatura máxima</translation>
    </message>
    <message>
        <source>wind</source>
        <translation>viento</translation>
    </message>
    <message>
        <source>humidity</source>
        <translation>humedad</translation>
    </message>
    <message>
        <source>sunshine</source>
        <translation>sol</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Line %1 of the table</source>
        <translation>Línea %1 de la tabla</translation>
    </message>
    <message>
        <source>is neither in the table of crops nor one of your own; choose one, or enter it among your own crops</source>
        <translation>no está en la tabla de cultivos ni es uno de los suyos; elija uno, o anótelo entre sus cultivos propios</translation>
    </message>
    <message>
        <source>is a day that this month does not have; choose an earlier one</source>
        <translation>es un día que este mes no tiene; elija uno anterior</translation>
    </message>
    <message>
        <source>makes the whole season too long; shorten the stages</source>
        <translation>hace demasiado larga la temporada; acorte las etapas</translation>
    </message>
    <message>
        <source>leaves a month with rain without a wet day; enter on how many days it rains</source>
        <translation>deja un mes con lluvia sin ningún día de lluvia; anote en cuántos días llueve</translation>
    </message>
    <message>
        <source>is more than the days of this month; enter fewer</source>
        <translation>es más que los días de este mes; anote menos</translation>
    </message>
    <message>
        <source>is too little for the wet days of this month: each has 0.1 mm at least</source>
        <translation>es muy poco para los días con lluvia de este mes: cada uno tiene al menos 0.1 mm</translation>
    </message>
    <message>
        <source>is below the lowest temperature of the same month; check both</source>
        <translation>es menor que la temperatura mínima del mismo mes; revise las dos</translation>
    </message>
    <message>
        <source>is not later than the day before it; put the days in order</source>
        <translation>no es posterior al día de antes; ponga los días en orden</translation>
    </message>
    <message>
        <source>does not name the columns; begin the table with a line such as date,rain_mm,t_min_c,t_max_c</source>
        <translation>no nombra las columnas; empiece la tabla con una línea como date,rain_mm,t_min_c,t_max_c</translation>
    </message>
    <message>
        <source>is not among the columns; add it to the table and to its first line</source>
        <translation>no está entre las columnas; agréguela a la tabla y a su primera línea</translation>
    </message>
    <message>
        <source>does not have as many cells as the first line; look for a mark too many or too few between them</source>
        <translation>no tiene tantas celdas como la primera línea; busque una coma u otro separador que sobre o falte</translation>
    </message>
    <message>
        <source>stands in the table already; keep one line for each day</source>
        <translation>ya está en la tabla; deje una línea por cada día</translation>
    </message>
    <message>
        <source>is earlier than the date above it; sort the lines by date</source>
        <translation>es anterior a la fecha de arriba; ordene las líneas por fecha</translation>
    </message>
    <message>
        <source>is below the lowest temperature of the same day; check both</source>
        <translation>es menor que la temperatura mínima del mismo día; revise las dos</translation>
    </message>
    <message>
        <source>comes after days that are left out, which count as gaps of the record</source>
        <translation>viene después de días que faltan, que cuentan como vacíos del registro</translation>
    </message>
    <message>
        <source>names a column that is not used</source>
        <translation>nombra una columna que no se usa</translation>
    </message>
    <message>
        <source>The weather table</source>
        <translation>La tabla del clima</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>mm per day</source>
        <translation>mm por día</translation>
    </message>
    <message>
        <source>mm per m</source>
        <translation>mm por m</translation>
    </message>
    <message>
        <source>L/min</source>
        <translation>L/min</translation>
    </message>
    <message>
        <source>L per day</source>
        <translation>L por día</translation>
    </message>
    <message>
        <source>s</source>
        <translation>s</translation>
    </message>
    <message>
        <source>m/s</source>
        <translation>m/s</translation>
    </message>
    <message>
        <source>years</source>
        <translation>años</translation>
    </message>
    <message>
        <source>%1 year</source>
        <translation>%1 año</translation>
    </message>
    <message numerus="yes">
        <source>%1 years</source>
        <translation>
            <numerusform>%1 año</numerusform>
            <numerusform>%1 años</numerusform>
        </translation>
    </message>
    <message>
        <source>Where water is missing, it is in %1.</source>
        <translation>Cuando falta agua, es en %1.</translation>
    </message>
    <message>
        <source>Where water is missing, it is in %1; most often in %2.</source>
        <translation>Cuando falta agua, es en estos meses: %1; más a menudo en %2.</translation>
    </message>
    <message>
        <source>Full at the start of %1 and with nothing more flowing in, the tank lasts a year or longer.</source>
        <translation>Lleno a comienzos de %1 y sin que entre más agua, el tanque dura un año o más.</translation>
    </message>
    <message>
        <source>With nothing drawn, an empty tank does not fill within a year.</source>
        <translation>Sin sacar nada, un tanque vacío no se llena en un año.</translation>
    </message>
    <message>
        <source>With nothing drawn, an empty tank fills in %1.</source>
        <translation>Sin sacar nada, un tanque vacío se llena en %1.</translation>
    </message>
    <message>
        <source>With nothing drawn, an empty tank fills quickest from the start of %1 on: in %2.</source>
        <translation>Sin sacar nada, un tanque vacío se llena más pronto desde comienzos de %1: en %2.</translation>
    </message>
    <message>
        <source>Almost any tank gives as many good years as are wanted.</source>
        <translation>Casi cualquier tanque da tantos años buenos como se desean.</translation>
    </message>
    <message>
        <source>A tank that holds about %1 already gives as many good years as are wanted.</source>
        <translation>Un tanque con cabida de unos %1 ya da tantos años buenos como se desean.</translation>
    </message>
    <message>
        <source>With this tank, beds of no size have as many good years as are wanted.</source>
        <translation>Con este tanque, ni las camas más pequeñas tienen tantos años buenos como se desean.</translation>
    </message>
    <message>
        <source>With this tank, even beds of %1 have as many good years as are wanted.</source>
        <translation>Con este tanque, incluso camas de %1 tienen tantos años buenos como se desean.</translation>
    </message>
    <message>
        <source>With this tank, beds of up to about %1 have as many good years as are wanted; entered: %2.</source>
        <translation>Con este tanque, camas de hasta unos %1 tienen tantos años buenos como se desean; anotado: %2.</translation>
    </message>
    <message>
        <source>In a mean year about %1 run over unused.</source>
        <translation>En un año promedio rebosan sin uso unos %1.</translation>
    </message>
    <message>
        <source>The latitude of the site is not known, so whether the water lasts cannot be answered. Read it from a map or a phone.</source>
        <translation>No se conoce la latitud del lugar, así que no se puede responder si alcanzará el agua. Léala en un mapa o un teléfono.</translation>
    </message>
    <message>
        <source>The climate is not known, so whether the water lasts cannot be answered. Enter rain, wet days, lowest and highest temperature of all twelve months, or take in a daily record.</source>
        <translation>No se conoce el clima, así que no se puede responder si alcanzará el agua. Anote la lluvia, los días con lluvia y las temperaturas mínima y máxima de los doce meses, o lea un registro diario.</translation>
    </message>
    <message>
        <source>The height above sea level is not known; evaporation is reckoned as at sea level. Read it from a map or a phone.</source>
        <translation>No se conoce la altura sobre el nivel del mar; la evaporación se calcula como al nivel del mar. Léala en un mapa o un teléfono.</translation>
    </message>
    <message>
        <source>Only rain on the tank itself brings water. Enter what the source gives in each month, or a roof or ground that is led to the tank.</source>
        <translation>Solo la lluvia sobre el tanque trae agua. Anote lo que da la fuente en cada mes, o un techo o terreno que lleve agua al tanque.</translation>
    </message>
    <message>
        <source>Nothing is drawn from the tank. Enter beds, animals or people who use its water.</source>
        <translation>No se saca nada del tanque. Anote camas de cultivo, animales o personas que usen su agua.</translation>
    </message>
    <message>
        <source>Water from an open tank is not safe to drink as it is. Use it for washing and the house, and treat what is drunk. People counted: %1.</source>
        <translation>El agua de un tanque abierto no es segura para beber tal como está. Úsela para lavar y para la casa, y trate la que se beba. Personas contadas: %1.</translation>
    </message>
    <message>
        <source>The water lasts in %1 of 10 years; %2 of 10 are wanted.</source>
        <translation>El agua alcanza en %1 de 10 años; se desean %2 de 10.</translation>
    </message>
    <message>
        <source>A tank that holds about %1 would reach it.</source>
        <translation>Se llegaría con un tanque con cabida de unos %1.</translation>
    </message>
    <message>
        <source>Beds of about %1 in all would reach it.</source>
        <translation>Se llegaría con camas de unos %1 en total.</translation>
    </message>
    <message>
        <source>The tank does not fill in any year: it holds %1, and the most that is ever in it is about %2. Lead in more water, or build it smaller.</source>
        <translation>El tanque no se llena en ningún año: le caben %1, y lo más que llega a tener son unos %2. Traiga más agua, o hágalo más pequeño.</translation>
    </message>
    <message>
        <source>How much the rain differs from year to year is not known. The years made from monthly means differ by %1, real ones mostly by more. Ask the weather station for the spread of yearly rain.</source>
        <translation>No se sabe cuánto varía la lluvia de un año a otro. Los años generados de promedios mensuales varían %1; los reales, casi siempre más. Pregunte en la estación meteorológica la variación de la lluvia anual.</translation>
    </message>
    <message>
        <source>The record has whole years: %1. At least %2 are wanted to see how often the water runs short.</source>
        <translation>Años completos que tiene el registro: %1. Se quieren al menos %2 para ver cada cuánto falta el agua.</translation>
    </message>
    <message>
        <source>Years of the record left out for their gaps: %1, the first one beginning in %2. Add what is missing, or have gaps filled in from the nearest year.</source>
        <translation>Años del registro dejados fuera por sus vacíos: %1; el primero empieza en %2. Agregue lo que falta, o haga completar los vacíos con el año más cercano.</translation>
    </message>
    <message>
        <source>Missing values of the record filled in from the nearest year: %1.</source>
        <translation>Valores que faltaban en el registro y se completaron con el año más cercano: %1.</translation>
    </message>
    <message>
        <source>Readings of the source in %1: %2. Take more than three, so that a wrong one shows.</source>
        <translation>Mediciones de la fuente de agua en %1: %2. Haga más de tres, para que se note si una está mal.</translation>
    </message>
    <message>
        <source>Reading %1 gives %2, far from the middle of its month, %3. Measure once more, and take the reading out if something went wrong.</source>
        <translation>La medición %1 da %2, lejos del valor medio de su mes, %3. Mida otra vez, y quite la medición si algo salió mal.</translation>
    </message>
    <message>
        <source>Reading %1: the vessel was full after %2. Below 3 seconds a watch is too coarse; take a larger vessel.</source>
        <translation>Medición %1: el recipiente se llenó a los %2. Por debajo de 3 segundos un reloj no es bastante fino; tome un recipiente más grande.</translation>
    </message>
    <message>
        <source>For %1 a flow of %2 is entered; the middle of the readings is %3. Enter the one you trust.</source>
        <translation>Para %1 está anotado un caudal de %2; el valor medio de las mediciones es %3. Anote el que le dé más confianza.</translation>
    </message>
    <message>
        <source>Rain alone waters the beds; nothing has to be drawn from the tank.</source>
        <translation>Solo con la lluvia se riegan las camas de cultivo; no hace falta sacar nada del tanque.</translation>
    </message>
    <message>
        <source>Nothing is drawn from the tank yet. Enter beds, animals or people who use its water.</source>
        <translation>Aún no se saca nada del tanque. Anote camas de cultivo, animales o personas que usen su agua.</translation>
    </message>
    <message>
        <source>the beds</source>
        <translation>las camas de cultivo</translation>
    </message>
    <message>
        <source>the animals</source>
        <translation>los animales</translation>
    </message>
    <message>
        <source>the people</source>
        <translation>las personas</translation>
    </message>
    <message>
        <source>In every year reckoned (%1) the beds stay watered.</source>
        <translation>En todos los años calculados (%1) las camas de cultivo tienen riego.</translation>
    </message>
    <message>
        <source>In every year reckoned (%1) there is water for %2.</source>
        <translation>En todos los años calculados (%1) hay agua para %2.</translation>
    </message>
    <message>
        <source>In no year reckoned (%1) do the beds stay watered all year.</source>
        <translation>En ninguno de los años calculados (%1) tienen riego todo el año las camas de cultivo.</translation>
    </message>
    <message>
        <source>In no year reckoned (%1) is there water all year for %2.</source>
        <translation>En ninguno de los años calculados (%1) hay agua todo el año para %2.</translation>
    </message>
    <message>
        <source>In %1 of %2 years the beds stay watered all year.</source>
        <translation>En %1 de %2 años las camas de cultivo tienen riego todo el año.</translation>
    </message>
    <message>
        <source>In %1 of %2 years there is water all year for %3.</source>
        <translation>En %1 de %2 años hay agua todo el año para %3.</translation>
    </message>
    <message>
        <source>Water is missing on %1, about %2 in all.</source>
        <translation>Falta agua en %1, unos %2 en total.</translation>
    </message>
    <message>
        <source>In the worst of %1 water is missing on %2, about %3 in all.</source>
        <translation>En el peor de %1 falta agua en %2, unos %3 en total.</translation>
    </message>
    <message>
        <source>In a middling year it is missing on %1.</source>
        <translation>En un año intermedio falta en %1.</translation>
    </message>
    <message>
        <source>What the tap or spring gives while it runs; time how long a vessel of known size takes to fill.</source>
        <translation>Lo que da la llave o el manantial mientras corre; mida cuánto tarda en llenarse un recipiente de tamaño conocido.</translation>
    </message>
    <message>
        <source>How long in a day the water runs into the tank; a spring led in day and night runs 24 hours.</source>
        <translation>Cuánto tiempo al día corre el agua hacia el tanque; un manantial que entra día y noche corre 24 horas.</translation>
    </message>
    <message>
        <source>Month in which this reading was taken.</source>
        <translation>Mes en que se hizo esta medición.</translation>
    </message>
    <message>
        <source>What the vessel holds up to the mark to which it was filled; take one that fills in 3 seconds or more.</source>
        <translation>Lo que cabe en el recipiente hasta la marca donde se llenó; tome uno que tarde 3 segundos o más en llenarse.</translation>
    </message>
    <message>
        <source>Time from putting the empty vessel under the flow until it is full, by watch.</source>
        <translation>Tiempo desde que se pone el recipiente vacío bajo el chorro hasta que se llena, con reloj.</translation>
    </message>
    <message>
        <source>Roof whose gutters lead to the tank, as seen from above: length times width of its level shadow.</source>
        <translation>Techo cuyas canaletas llevan al tanque, visto desde arriba: largo por ancho de su sombra a nivel.</translation>
    </message>
    <message>
        <source>Part of the rain on the roof that reaches the tank: 0.80 is 80 litres of 100.</source>
        <translation>Parte de la lluvia sobre el techo que llega al tanque: 0.80 es 80 litros de 100.</translation>
    </message>
    <message>
        <source>Rain at the start of a wet spell that is let run off to wash the roof; 0 when nothing is turned away.</source>
        <translation>Lluvia al comienzo de una racha de días lluviosos que se deja correr para lavar el techo; 0 si no se desvía nada.</translation>
    </message>
    <message>
        <source>Ground uphill whose runoff a ditch leads to the tank; pace its length and width along the level.</source>
        <translation>Terreno ladera arriba cuya escorrentía lleva una zanja al tanque; mida a pasos su largo y su ancho, a nivel.</translation>
    </message>
    <message>
        <source>Part of the rain on this ground that reaches the tank; bare and steep ground sheds more than grass.</source>
        <translation>Parte de la lluvia sobre este terreno que llega al tanque; el suelo desnudo y empinado da más que el pasto.</translation>
    </message>
    <message>
        <source>Rain at the start of a wet spell that only wets the ground or is let run past with its mud.</source>
        <translation>Lluvia al comienzo de una racha de días lluviosos que solo moja el terreno o se deja pasar con su lodo.</translation>
    </message>
    <message>
        <source>Evaporation of open water for each unit of reference evapotranspiration; 1.05 for shallow water.</source>
        <translation>Evaporación del agua libre por cada unidad de evapotranspiración de referencia; 1.05 para agua poco honda.</translation>
    </message>
    <message>
        <source>Share of the evaporation that a roof, a shade cloth or a floating cover keeps back; 0 for open water.</source>
        <translation>Parte de la evaporación que detiene un techo, una malla sombra o una cubierta flotante; 0 para agua libre.</translation>
    </message>
    <message>
        <source>Depth of water lost through the wetted plaster in a day; measure on a covered tank how far the level falls over several days without inflow or drawing.</source>
        <translation>Profundidad de agua que se pierde en un día por el repello mojado; mida en un tanque tapado cuánto baja el nivel en varios días sin que entre ni se saque agua.</translation>
    </message>
    <message>
        <source>Crop of this bed, from the table or one of your own.</source>
        <translation>Cultivo de esta cama, de la tabla o uno propio.</translation>
    </message>
    <message>
        <source>Planted area that is watered from the tank, paths left out.</source>
        <translation>Área sembrada que se riega con el tanque, sin los caminos.</translation>
    </message>
    <message>
        <source>Month in which the crop is sown or planted out each year.</source>
        <translation>Mes en que se siembra o trasplanta el cultivo cada año.</translation>
    </message>
    <message>
        <source>Day of that month; the first or the middle is near enough.</source>
        <translation>Día de ese mes; basta con el primero o la mitad del mes.</translation>
    </message>
    <message>
        <source>How the water is given to the bed.</source>
        <translation>Cómo se da el agua a la cama.</translation>
    </message>
    <message>
        <source>Share of the water drawn that stays where the roots can use it; leave empty to take it from the way of watering.</source>
        <translation>Parte del agua sacada que queda donde las raíces la pueden usar; deje vacío para tomarla de la forma de riego.</translation>
    </message>
    <message>
        <source>Animals that drink from the tank.</source>
        <translation>Animales que beben del tanque.</translation>
    </message>
    <message>
        <source>Number of these animals, on average.</source>
        <translation>Número de estos animales, en promedio.</translation>
    </message>
    <message>
        <source>Water one animal drinks in a day; count the buckets, or leave empty to take the usual for its kind.</source>
        <translation>Agua que bebe un animal en un día; cuente los baldes, o deje vacío para tomar lo usual de su clase.</translation>
    </message>
    <message>
        <source>People whose water for washing and the house comes from the tank.</source>
        <translation>Personas que sacan del tanque el agua para lavar y para la casa.</translation>
    </message>
    <message>
        <source>Water one person takes from the tank in a day; count the vessels carried home.</source>
        <translation>Agua que toma del tanque una persona en un día; cuente los recipientes que se llevan a casa.</translation>
    </message>
    <message>
        <source>Name by which the beds call this crop; each one only once.</source>
        <translation>Nombre con que las camas llaman a este cultivo; cada uno una sola vez.</translation>
    </message>
    <message>
        <source>Water use over reference evapotranspiration from planting until a tenth of the ground is covered.</source>
        <translation>Uso de agua entre evapotranspiración de referencia, desde la siembra hasta que se cubre un décimo del suelo.</translation>
    </message>
    <message>
        <source>Water use over reference evapotranspiration while the crop covers the ground fully.</source>
        <translation>Uso de agua entre evapotranspiración de referencia mientras el cultivo cubre todo el suelo.</translation>
    </message>
    <message>
        <source>Water use over reference evapotranspiration on the day of harvest or when the leaves die.</source>
        <translation>Uso de agua entre evapotranspiración de referencia el día de la cosecha o cuando mueren las hojas.</translation>
    </message>
    <message>
        <source>Height of the full-grown crop, or to the top of its stakes.</source>
        <translation>Altura del cultivo ya crecido, o hasta la punta de sus tutores.</translation>
    </message>
    <message>
        <source>Days from planting until a tenth of the ground is covered.</source>
        <translation>Días desde la siembra hasta que se cubre un décimo del suelo.</translation>
    </message>
    <message>
        <source>Days from then until the leaves cover the ground.</source>
        <translation>Días desde entonces hasta que las hojas cubren el suelo.</translation>
    </message>
    <message>
        <source>Days from full cover until the leaves begin to yellow or fruit ripens.</source>
        <translation>Días desde que cubre todo hasta que las hojas empiezan a ponerse amarillas o el fruto madura.</translation>
    </message>
    <message>
        <source>Days from then until harvest or until watering stops.</source>
        <translation>Días desde entonces hasta la cosecha o hasta que se deja de regar.</translation>
    </message>
    <message>
        <source>Depth from which most roots draw; dig beside a grown plant and look.</source>
        <translation>Profundidad de donde toman agua casi todas las raíces; cave junto a una planta crecida y mire.</translation>
    </message>
    <message>
        <source>Part of the water held by the soil that the crop may use up before it suffers: 0.40 is 40 litres of 100.</source>
        <translation>Parte del agua que guarda el suelo que el cultivo puede gastar antes de sufrir: 0.40 es 40 litros de 100.</translation>
    </message>
    <message>
        <source>Water the soil keeps for roots after it has drained, down to wilting: sand little, loam and clay much.</source>
        <translation>Agua que el suelo guarda para las raíces desde que escurre hasta que la planta se marchita: poca la arena, mucha la tierra franca y la arcilla.</translation>
    </message>
    <message>
        <source>Whether twelve monthly means or a table of single days from a weather station is at hand.</source>
        <translation>Si se tienen doce promedios mensuales o una tabla día por día de una estación meteorológica.</translation>
    </message>
    <message>
        <source>Rain of this month, mean of many years, from the nearest weather station.</source>
        <translation>Lluvia de este mes, promedio de muchos años, de la estación meteorológica más cercana.</translation>
    </message>
    <message>
        <source>Days of this month on which it rains 0.1 mm or more, mean of many years.</source>
        <translation>Días de este mes en que llueve 0.1 mm o más, promedio de muchos años.</translation>
    </message>
    <message>
        <source>Mean of the lowest temperatures of each day, in the shade.</source>
        <translation>Promedio de las temperaturas mínimas de cada día, a la sombra.</translation>
    </message>
    <message>
        <source>Mean of the highest temperatures of each day, in the shade.</source>
        <translation>Promedio de las temperaturas máximas de cada día, a la sombra.</translation>
    </message>
    <message>
        <source>Mean relative humidity of the air; leave empty when not known, then it is estimated from the temperature.</source>
        <translation>Humedad relativa media del aire; deje vacío si no se sabe, y se estima por la temperatura.</translation>
    </message>
    <message>
        <source>Mean wind 2 m above the ground; leave empty when not known, then a light wind is reckoned with.</source>
        <translation>Viento medio a 2 m sobre el suelo; deje vacío si no se sabe, y se calcula con un viento suave.</translation>
    </message>
    <message>
        <source>Mean hours of bright sunshine a day; leave empty when not known, then it is estimated from the temperatures.</source>
        <translation>Promedio de horas de sol brillante al día; deje vacío si no se sabe, y se estima por las temperaturas.</translation>
    </message>
    <message>
        <source>Standard deviation of the yearly rain over its mean, from the weather station. Leave empty if not known.</source>
        <translation>Desviación estándar de la lluvia anual entre su promedio, de la estación meteorológica. Deje vacío si no se sabe.</translation>
    </message>
    <message>
        <source>How many years of daily weather are made from the monthly means; more years show rare droughts better and take longer.</source>
        <translation>Cuántos años de clima diario se generan de los promedios mensuales; más años muestran mejor las sequías raras y tardan más.</translation>
    </message>
    <message>
        <source>The same number gives the same years; another one shows how much the answer depends on chance.</source>
        <translation>El mismo número da los mismos años; otro muestra cuánto depende del azar la respuesta.</translation>
    </message>
    <message>
        <source>Penman-Monteith is the standard and estimates what was not measured; Hargreaves uses temperatures alone.</source>
        <translation>Penman-Monteith es la norma y estima lo que no se midió; Hargreaves usa solo temperaturas.</translation>
    </message>
    <message>
        <source>Turns the day&apos;s range of temperature into sunshine where none was measured: 0.16 inland, 0.19 at a coast.</source>
        <translation>Convierte la diferencia entre máxima y mínima del día en sol donde no se midió: 0.16 tierra adentro, 0.19 en la costa.</translation>
    </message>
    <message>
        <source>What to do with years in which days or values of the record are missing.</source>
        <translation>Qué hacer con los años en que faltan días o valores del registro.</translation>
    </message>
    <message>
        <source>In how many of ten years there shall be water on every day; ask those who live from the beds.</source>
        <translation>En cuántos de diez años debe haber agua todos los días; pregunte a quienes viven de lo que se siembra.</translation>
    </message>
    <message>
        <source>Flow</source>
        <translation>Caudal</translation>
    </message>
    <message>
        <source>Runs each day</source>
        <translation>Corre al día</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Mes</translation>
    </message>
    <message>
        <source>Vessel holds</source>
        <translation>Cabida del recipiente</translation>
    </message>
    <message>
        <source>Time to fill</source>
        <translation>Tiempo de llenado</translation>
    </message>
    <message>
        <source>Roof area</source>
        <translation>Área del techo</translation>
    </message>
    <message>
        <source>Share of rain off the roof</source>
        <translation>Parte de la lluvia que da el techo</translation>
    </message>
    <message>
        <source>First flush off the roof</source>
        <translation>Primeras aguas del techo</translation>
    </message>
    <message>
        <source>Ground area</source>
        <translation>Área del terreno</translation>
    </message>
    <message>
        <source>Share of rain off the ground</source>
        <translation>Parte de la lluvia que da el terreno</translation>
    </message>
    <message>
        <source>First flush off the ground</source>
        <translation>Primeras aguas del terreno</translation>
    </message>
    <message>
        <source>Evaporation factor of open water</source>
        <translation>Factor de evaporación de agua libre</translation>
    </message>
    <message>
        <source>Evaporation stopped by a cover</source>
        <translation>Evaporación que detiene la cubierta</translation>
    </message>
    <message>
        <source>Seepage through the plaster</source>
        <translation>Filtración por el repello</translation>
    </message>
    <message>
        <source>Crop</source>
        <translation>Cultivo</translation>
    </message>
    <message>
        <source>Area</source>
        <translation>Área</translation>
    </message>
    <message>
        <source>Planted, month</source>
        <translation>Siembra, mes</translation>
    </message>
    <message>
        <source>Planted, day</source>
        <translation>Siembra, día</translation>
    </message>
    <message>
        <source>Watered by</source>
        <translation>Forma de riego</translation>
    </message>
    <message>
        <source>Reaches the roots</source>
        <translation>Llega a las raíces</translation>
    </message>
    <message>
        <source>Animal</source>
        <translation>Animal</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Cuántos</translation>
    </message>
    <message>
        <source>Each drinks</source>
        <translation>Bebe cada uno</translation>
    </message>
    <message>
        <source>People who use the water</source>
        <translation>Personas que usan el agua</translation>
    </message>
    <message>
        <source>Water for each person</source>
        <translation>Agua por persona</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Kc, first stage</source>
        <translation>Kc inicial</translation>
    </message>
    <message>
        <source>Kc, mid season</source>
        <translation>Kc medio</translation>
    </message>
    <message>
        <source>Kc, last day</source>
        <translation>Kc final</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Altura</translation>
    </message>
    <message>
        <source>First stage</source>
        <translation>Etapa inicial</translation>
    </message>
    <message>
        <source>Growing stage</source>
        <translation>Desarrollo</translation>
    </message>
    <message>
        <source>Mid season</source>
        <translation>Media temporada</translation>
    </message>
    <message>
        <source>Late season</source>
        <translation>Fin de temporada</translation>
    </message>
    <message>
        <source>Root depth</source>
        <translation>Profundidad de raíces</translation>
    </message>
    <message>
        <source>Share used before stress</source>
        <translation>Parte usable antes de sufrir</translation>
    </message>
    <message>
        <source>Water the soil of the beds holds</source>
        <translation>Agua que guarda el suelo de las camas</translation>
    </message>
    <message>
        <source>Weather known as</source>
        <translation>Clima conocido por</translation>
    </message>
    <message>
        <source>Rain</source>
        <translation>Lluvia</translation>
    </message>
    <message>
        <source>Wet days</source>
        <translation>Días con lluvia</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>Viento</translation>
    </message>
    <message>
        <source>Sunshine</source>
        <translation>Sol</translation>
    </message>
    <message>
        <source>Spread of yearly rain</source>
        <translation>Variación de la lluvia anual</translation>
    </message>
    <message>
        <source>Weather years to make</source>
        <translation>Años de clima por generar</translation>
    </message>
    <message>
        <source>Number that starts the draw</source>
        <translation>Número que inicia el sorteo</translation>
    </message>
    <message>
        <source>Reference evapotranspiration by</source>
        <translation>Evapotranspiración de referencia según</translation>
    </message>
    <message>
        <source>Radiation factor kRs</source>
        <translation>Factor de radiación kRs</translation>
    </message>
    <message>
        <source>Gaps in the record</source>
        <translation>Vacíos del registro</translation>
    </message>
    <message>
        <source>Good years wanted in ten</source>
        <translation>Años buenos deseados de cada diez</translation>
    </message>
    <message>
        <source>Tomato</source>
        <translation>Tomate</translation>
    </message>
    <message>
        <source>Sweet pepper</source>
        <translation>Pimiento</translation>
    </message>
    <message>
        <source>Aubergine (eggplant)</source>
        <translation>Berenjena</translation>
    </message>
    <message>
        <source>Potato</source>
        <translation>Papa</translation>
    </message>
    <message>
        <source>Onion, for bulbs</source>
        <translation>Cebolla de bulbo</translation>
    </message>
    <message>
        <source>Onion, green</source>
        <translation>Cebolla verde</translation>
    </message>
    <message>
        <source>Garlic</source>
        <translation>Ajo</translation>
    </message>
    <message>
        <source>Cabbage</source>
        <translation>Repollo</translation>
    </message>
    <message>
        <source>Cauliflower</source>
        <translation>Coliflor</translation>
    </message>
    <message>
        <source>Broccoli</source>
        <translation>Brócoli</translation>
    </message>
    <message>
        <source>Carrot</source>
        <translation>Zanahoria</translation>
    </message>
    <message>
        <source>Lettuce</source>
        <translation>Lechuga</translation>
    </message>
    <message>
        <source>Spinach</source>
        <translation>Espinaca</translation>
    </message>
    <message>
        <source>Radish</source>
        <translation>Rábano</translation>
    </message>
    <message>
        <source>Cucumber</source>
        <translation>Pepino</translation>
    </message>
    <message>
        <source>Beans, green</source>
        <translation>Vainita (frijol verde)</translation>
    </message>
    <message>
        <source>Beans, dry</source>
        <translation>Frijol seco</translation>
    </message>
    <message>
        <source>Peas</source>
        <translation>Arveja</translation>
    </message>
    <message>
        <source>Lentils</source>
        <translation>Lenteja</translation>
    </message>
    <message>
        <source>Maize, for grain</source>
        <translation>Maíz para grano</translation>
    </message>
    <message>
        <source>Maize, sweet</source>
        <translation>Maíz dulce</translation>
    </message>
    <message>
        <source>Winter wheat</source>
        <translation>Trigo de invierno</translation>
    </message>
    <message>
        <source>Barley</source>
        <translation>Cebada</translation>
    </message>
    <message>
        <source>Millet</source>
        <translation>Mijo</translation>
    </message>
    <message>
        <source>Citrus trees</source>
        <translation>Árboles cítricos</translation>
    </message>
    <message>
        <source>Fruit trees that shed their leaves</source>
        <translation>Frutales que botan la hoja</translation>
    </message>
    <message>
        <source>metal sheet roof</source>
        <translation>techo de lámina metálica</translation>
    </message>
    <message>
        <source>tiled or slate roof</source>
        <translation>techo de teja o pizarra</translation>
    </message>
    <message>
        <source>thatched roof</source>
        <translation>techo de paja</translation>
    </message>
    <message>
        <source>bare ground</source>
        <translation>suelo desnudo</translation>
    </message>
    <message>
        <source>pasture</source>
        <translation>pasto</translation>
    </message>
    <message>
        <source>tilled ground</source>
        <translation>terreno labrado</translation>
    </message>
    <message>
        <source>first flush off a roof</source>
        <translation>primeras aguas de un techo</translation>
    </message>
    <message>
        <source>first flush off ground</source>
        <translation>primeras aguas del terreno</translation>
    </message>
    <message>
        <source>open water</source>
        <translation>agua libre</translation>
    </message>
    <message>
        <source>shade cloth, one layer</source>
        <translation>malla sombra, simple</translation>
    </message>
    <message>
        <source>shade cloth, two layers</source>
        <translation>malla sombra, doble</translation>
    </message>
    <message>
        <source>seepage through the plaster</source>
        <translation>filtración por el repello</translation>
    </message>
    <message>
        <source>one person</source>
        <translation>una persona</translation>
    </message>
    <message>
        <source>%1: median %2 of %3, from %4 to %5.</source>
        <translation>%1: mediana %2 de %3, de %4 a %5.</translation>
    </message>
    <message>
        <source>Apart from the others: row %1.</source>
        <translation>Lejos de las demás: fila %1.</translation>
    </message>
    <message>
        <source>%1 reading</source>
        <translation>%1 medición</translation>
    </message>
    <message numerus="yes">
        <source>%1 readings</source>
        <translation>
            <numerusform>%1 medición</numerusform>
            <numerusform>%1 mediciones</numerusform>
        </translation>
    </message>
    <message>
        <source>A daily record is a table with the columns date (year-month-day), rain_mm, t_min_c, t_max_c and, where measured, wind_m_s, humidity_percent, sun_hours. Gaps are reported and never filled silently.</source>
        <translation>Un registro diario es una tabla con las columnas date (año-mes-día), rain_mm, t_min_c, t_max_c y, donde se mide, wind_m_s, humidity_percent, sun_hours. Los vacíos se informan y nunca se completan sin avisar.</translation>
    </message>
    <message>
        <source>The project holds a daily record from %1 to %2, %3.</source>
        <translation>El proyecto tiene un registro diario del %1 al %2, %3.</translation>
    </message>
    <message>
        <source>It is not used now: the weather comes from monthly means.</source>
        <translation>No se usa ahora: el clima viene de promedios mensuales.</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 y %2</translation>
    </message>
    <message>
        <source>Whether a fence on all four sides, a gate that shuts itself and a ladder or rope to climb out are part of the work.</source>
        <translation>Si la obra incluye una cerca por los cuatro lados, una puerta que se cierra sola y una escalera o soga para salir.</translation>
    </message>
    <message>
        <source>Whether runoff from roof or ground passes a silt trap before it enters the tank.</source>
        <translation>Si la escorrentía del techo o del terreno pasa por un desarenador antes de entrar al tanque.</translation>
    </message>
    <message>
        <source>Name of the licensed engineer who answers for building although a finding says stop. Counts only with licence, reason and date, and is printed on the sheets.</source>
        <translation>Nombre del ingeniero autorizado que responde por construir aunque una observación diga alto. Vale solo con licencia, motivo y fecha, y se imprime en las hojas.</translation>
    </message>
    <message>
        <source>Number or register of the engineer&apos;s licence.</source>
        <translation>Número o registro de la licencia del ingeniero.</translation>
    </message>
    <message>
        <source>What the engineer found and asks for, so that it may be built.</source>
        <translation>Lo que el ingeniero encontró y lo que exige para que se pueda construir.</translation>
    </message>
    <message>
        <source>Day on which the engineer decided.</source>
        <translation>Día en que decidió el ingeniero.</translation>
    </message>
    <message>
        <source>Fence, gate and ladder planned</source>
        <translation>Cerca, puerta y escalera previstas</translation>
    </message>
    <message>
        <source>Silt trap planned</source>
        <translation>Desarenador previsto</translation>
    </message>
    <message>
        <source>Override: engineer</source>
        <translation>Excepción: ingeniero</translation>
    </message>
    <message>
        <source>Override: licence</source>
        <translation>Excepción: licencia</translation>
    </message>
    <message>
        <source>Override: reason</source>
        <translation>Excepción: motivo</translation>
    </message>
    <message>
        <source>Override: date</source>
        <translation>Excepción: fecha</translation>
    </message>
    <message>
        <source>holds fewer different points than a surface needs</source>
        <translation>tiene menos puntos distintos de los que necesita una superficie</translation>
    </message>
    <message>
        <source>holds points that all lie on one line; survey some beside it</source>
        <translation>tiene todos los puntos en una misma línea; mida algunos fuera de ella</translation>
    </message>
    <message>
        <source>repeats an earlier point and is left out</source>
        <translation>repite un punto anterior y no se usa</translation>
    </message>
    <message>
        <source>stands far above or below the points around it; check its height</source>
        <translation>está muy por encima o por debajo de los puntos que lo rodean; revise su altura</translation>
    </message>
    <message>
        <source>lies far from all other points; check its place</source>
        <translation>está lejos de todos los demás puntos; revise su lugar</translation>
    </message>
    <message>
        <source>The soil is loose fill. Fill settles unevenly and cracks the lining: no floor or wall may stand on it. Choose a place in natural ground, or let a licensed engineer decide.</source>
        <translation>El suelo es relleno suelto. El relleno se asienta disparejo y raja el revestimiento: ningún piso ni pared debe apoyarse en él. Elija un lugar en terreno natural, o deje que decida un ingeniero autorizado.</translation>
    </message>
    <message>
        <source>The soil is soft and wet. It does not carry the lining and its cut does not stand. Choose a drier place, or let a licensed engineer decide.</source>
        <translation>El suelo es blando y mojado. No sostiene el revestimiento y su corte no se tiene en pie. Elija un lugar más seco, o deje que decida un ingeniero autorizado.</translation>
    </message>
    <message>
        <source>Part of the floor is rock. The lining cracks where rock and earth meet: bed it evenly on stones all over, and break no rock without someone trained for it.</source>
        <translation>Parte del fondo es roca. El revestimiento se raja donde se juntan roca y tierra: asiéntelo parejo sobre piedras en todo el fondo, y no rompa roca sin alguien capacitado para eso.</translation>
    </message>
    <message>
        <source>The soil holds %1 clay. From about %2 on, clay may swell when wet and crack the lining. Test it: dry a clod and see how far it shrinks.</source>
        <translation>El suelo tiene %1 de arcilla. Desde cerca de %2, la arcilla puede hincharse al mojarse y rajar el revestimiento. Pruébela: seque un terrón y vea cuánto se encoge.</translation>
    </message>
    <message>
        <source>The pit is %1 deep and its walls lean back %2 for each unit of height; the published table asks for %3 in this soil. Slope the open cut back further, step it, or shore it. Local codes and licensed practice come first.</source>
        <translation>La excavación tiene %1 de profundidad y sus paredes se inclinan hacia afuera %2 por cada unidad de altura; la tabla publicada pide %3 en este suelo. Incline más el corte abierto, hágalo en gradas o entíbelo. Las normas locales y el ejercicio profesional autorizado van primero.</translation>
    </message>
    <message>
        <source>The pit is %1 deep. In the weakest soil of this kind a cut with this batter is reckoned to stand to %2 only, with a safety of %3. Dig less deep, lean the walls back, shore them, or let a licensed engineer test the soil.</source>
        <translation>La excavación tiene %1 de profundidad. En el suelo más débil de esta clase, según el cálculo, un corte con este talud se tiene en pie solo hasta %2, con una seguridad de %3. Cave menos hondo, incline más las paredes hacia afuera, entíbelas, o deje que un ingeniero autorizado ensaye el suelo.</translation>
    </message>
    <message>
        <source>The ground falls at %1. From %2 on look for cracks, springs, leaning trees and old slips before you choose the place.</source>
        <translation>El terreno tiene una pendiente de %1. Desde %2, busque grietas, manantiales, árboles inclinados y deslizamientos viejos antes de elegir el lugar.</translation>
    </message>
    <message>
        <source>The ground falls at %1. From %2 on no tank is built without a licensed engineer: a leak can bring the slope down.</source>
        <translation>El terreno tiene una pendiente de %1. Desde %2 no se construye ningún tanque sin un ingeniero autorizado: una fuga puede hacer que se derrumbe la ladera.</translation>
    </message>
    <message>
        <source>Distance and drop of the nearest edge downhill are not known, and not known is not safe. Measure both.</source>
        <translation>No se conocen la distancia ni la altura del filo más cercano ladera abajo, y lo que no se sabe no es seguro. Mida las dos.</translation>
    </message>
    <message>
        <source>The edge downhill is %1 away. One rule (drop plus pit depth) asks for %2, another (a third of the drop, as for footings) for %3; they disagree here. Move the tank back if you can.</source>
        <translation>El filo ladera abajo está a %1. Una regla (altura del filo más profundidad de la excavación) pide %2; otra (un tercio de la altura, como para cimientos) pide %3; aquí no coinciden. Aleje el tanque del filo si puede.</translation>
    </message>
    <message>
        <source>The edge downhill is %1 away, nearer than both rules allow: %2 (drop plus pit depth) and %3 (a third of the drop, as for footings). Move the tank back, or let a licensed engineer decide.</source>
        <translation>El filo ladera abajo está a %1, más cerca de lo que permiten las dos reglas: %2 (altura del filo más profundidad de la excavación) y %3 (un tercio de la altura, como para cimientos). Aleje el tanque del filo, o deje que decida un ingeniero autorizado.</translation>
    </message>
    <message>
        <source>The depth of ground water is not known, and not known is not safe: it can lift an empty tank. Ask how high wells and springs stand in the rains.</source>
        <translation>No se conoce la profundidad del agua subterránea, y lo que no se sabe no es seguro: puede levantar un tanque vacío. Pregunte hasta dónde suben los pozos y los manantiales en época de lluvias.</translation>
    </message>
    <message>
        <source>Never let the water sink below %1 above the floor then.</source>
        <translation>Entonces nunca deje que el agua baje de %1 sobre el piso.</translation>
    </message>
    <message>
        <source>Not even a full tank would hold it down.</source>
        <translation>Ni siquiera el tanque lleno lo mantendría en su lugar.</translation>
    </message>
    <message>
        <source>Ground water stands %1 over the underside of the floor and lifts the empty tank: its weight is %2 of the lift, %3 is wanted.</source>
        <translation>El agua subterránea está %1 por encima de la cara inferior del piso y levanta el tanque vacío: el peso del tanque es %2 veces el empuje, y se piden %3.</translation>
    </message>
    <message>
        <source>Whether a house lies downhill is not known, and not known is not safe. Walk the way that escaping water would take.</source>
        <translation>No se sabe si hay una casa ladera abajo, y lo que no se sabe no es seguro. Recorra a pie el camino que tomaría el agua si se escapa.</translation>
    </message>
    <message>
        <source>A house lies %1 downhill, within %2. Lead the overflow, and the way of the water if the tank breaks, past it, or choose another place.</source>
        <translation>Hay una casa a %1 ladera abajo, a menos de %2. Haga que pasen lejos de ella el agua del rebosadero y la que saldría si se rompe el tanque, o elija otro lugar.</translation>
    </message>
    <message>
        <source>Small children live near and no fence is planned. A child drowns in silence and cannot climb a smooth wall: plan a fence on all four sides with a gate that shuts itself, and a ladder or rope to climb out.</source>
        <translation>En los alrededores viven niños pequeños y no hay cerca prevista. Un niño se ahoga en silencio y no puede trepar una pared lisa: prevea una cerca por los cuatro lados con una puerta que se cierre sola, y una escalera o soga para salir.</translation>
    </message>
    <message>
        <source>Whether small children live within 20 m is not known, and not known is not safe. Plan the fence, or ask.</source>
        <translation>No se sabe si viven niños pequeños a menos de 20 m, y lo que no se sabe no es seguro. Prevea la cerca, o pregunte.</translation>
    </message>
    <message>
        <source>Runoff is led in and no silt trap is planned. Silt fills the tank and wears the lining: plan a trap and a way to let the first rain go.</source>
        <translation>Entra escorrentía y no hay desarenador previsto. El lodo llena el tanque y desgasta el revestimiento: prevea un desarenador y una forma de botar las primeras aguas.</translation>
    </message>
    <message>
        <source>In %1 the mean lowest temperature is %2. Do not plaster or cure in frost, and ask locally whether ice has broken linings.</source>
        <translation>En %1 el promedio de las temperaturas mínimas es %2. No ponga repello ni haga el curado cuando hiela, y pregunte en la zona si el hielo ha roto revestimientos.</translation>
    </message>
    <message>
        <source>Water is missing all year round; most often in %1.</source>
        <translation>Falta agua todo el año; más a menudo en %1.</translation>
    </message>
    <message>
        <source>Full at the start of %1, when it is used up fastest, and with nothing more flowing in, the tank lasts %2.</source>
        <translation>Lleno a comienzos de %1, cuando más rápido se gasta, y sin que entre más agua, el tanque dura %2.</translation>
    </message>
    <message>
        <source>No tank of this depth and batter, up to %1, gives as many good years as are wanted.</source>
        <translation>Ningún tanque de esta profundidad y este talud, de hasta %1, da tantos años buenos como se desean.</translation>
    </message>
    <message>
        <source>To give as many good years as are wanted, a tank of this depth has to hold about %1.</source>
        <translation>Para dar tantos años buenos como se desean, un tanque de esta profundidad debe tener una cabida de unos %1.</translation>
    </message>
    <message>
        <source>No tank of this depth and batter, up to %1, would reach it: lead in more water, or need less.</source>
        <translation>Ningún tanque de esta profundidad y este talud, de hasta %1, lo lograría: haga entrar más agua, o necesite menos.</translation>
    </message>
    <message>
        <source>The yearly rain of the weather years made differs by %1; a spread of %2 is entered. Check the spread and the wet days, or have more years made.</source>
        <translation>La lluvia anual de los años de clima generados varía %1; está anotada una variación de %2. Revise la variación y los días con lluvia, o haga generar más años.</translation>
    </message>
    <message>
        <source>Weather years made from the monthly means: %1. Have at least %2 made to see how often the water runs short.</source>
        <translation>Años de clima generados de los promedios mensuales: %1. Haga generar al menos %2 para ver cada cuánto falta agua.</translation>
    </message>
    <message>
        <source>Reference evapotranspiration of a mean year is %1 by Penman-Monteith and %2 by Hargreaves. Enter or check humidity, wind and sunshine, which only the first one uses.</source>
        <translation>La evapotranspiración de referencia de un año promedio es %1 según Penman-Monteith y %2 según Hargreaves. Anote o revise la humedad, el viento y el sol, que solo usa la primera.</translation>
    </message>
    <message>
        <source>Mean daily lowest</source>
        <translation>Mínima diaria media</translation>
    </message>
    <message>
        <source>Mean daily highest</source>
        <translation>Máxima diaria media</translation>
    </message>
    <message>
        <source>The record holds no whole year without gaps, counted from its wettest month. Add days, or have gaps filled in.</source>
        <translation>El registro no tiene ningún año completo sin vacíos, contado desde su mes más lluvioso. Agregue días, o haga completar los vacíos.</translation>
    </message>
    <message>
        <source>Reckoned with: %1.</source>
        <translation>Se calcula con: %1.</translation>
    </message>
    <message>
        <source>tank in natural ground</source>
        <translation>tanque en terreno natural</translation>
    </message>
    <message>
        <source>cut and fill balanced</source>
        <translation>corte y relleno compensados</translation>
    </message>
    <message>
        <source>open end of the pipe</source>
        <translation>extremo abierto de la tubería</translation>
    </message>
    <message>
        <source>tap</source>
        <translation>llave</translation>
    </message>
    <message>
        <source>low-head drip kit</source>
        <translation>equipo de goteo de baja presión</translation>
    </message>
    <message>
        <source>drip lines at full pressure</source>
        <translation>cintas de goteo a presión completa</translation>
    </message>
    <message>
        <source>micro-sprinkler</source>
        <translation>microaspersor</translation>
    </message>
    <message>
        <source>notch in the rim</source>
        <translation>muesca en el borde</translation>
    </message>
    <message>
        <source>pipe</source>
        <translation>tubo</translation>
    </message>
    <message>
        <source>bare soil</source>
        <translation>suelo desnudo</translation>
    </message>
    <message>
        <source>grass</source>
        <translation>pasto</translation>
    </message>
    <message>
        <source>stone pitching</source>
        <translation>empedrado</translation>
    </message>
    <message>
        <source>plaster</source>
        <translation>repello</translation>
    </message>
    <message>
        <source>the line from the source</source>
        <translation>la tubería de la fuente</translation>
    </message>
    <message>
        <source>the line to the field</source>
        <translation>la tubería al campo</translation>
    </message>
    <message>
        <source>Water does not flow as it should through %1: %2.</source>
        <translation>El agua no corre como debe por %1: %2.</translation>
    </message>
    <message>
        <source>With the outlet shut, the water in %1 presses with %2; the pipe bears %3. Take a stronger class, or let the water fall into an open tank on the way, which breaks the pressure.</source>
        <translation>Con la salida cerrada, el agua en %1 presiona con %2; el tubo aguanta %3. Tome una clase más fuerte, o haga caer el agua en el camino a un tanque abierto, que corta la presión.</translation>
    </message>
    <message>
        <source>In %1, at %2 along it, the pressure head would sink to %3; under %4 the column of water parts and the flow reckoned does not come about. Lay the pipe lower there, or throttle it at its end.</source>
        <translation>En %1, a %2 de recorrido, la carga de presión bajaría a %3; por debajo de %4 la columna de agua se corta y no se da el caudal calculado. Ponga allí la tubería más baja, o reduzca el paso en su extremo.</translation>
    </message>
    <message>
        <source>From %2 to %3 along %1 the pipe lies above the line of heads and sucks, down to %4 of pressure head: air gathers, and a leak draws in dirt. Lay it lower there, or throttle the line at its end.</source>
        <translation>De %2 a %3 a lo largo de %1, el tubo queda por encima de la línea de carga y succiona, hasta %4 de carga de presión: se junta aire, y por una fuga entra suciedad. Póngalo allí más bajo, o reduzca el paso en el extremo de la tubería.</translation>
    </message>
    <message>
        <source>Air behind the high points of %1, the first at %2 along it, can hold back %3 of head; there are only %4 to drive the water, so it may not start to flow. Lay the pipe with a steady fall, or put an air valve on each high point.</source>
        <translation>El aire detrás de los puntos altos de %1, el primero a %2 de recorrido, puede detener %3 de carga; solo hay %4 para mover el agua, así que puede que no empiece a correr. Ponga la tubería con bajada continua, o una válvula de aire en cada punto alto.</translation>
    </message>
    <message>
        <source>No pipe of the table brings that much and bears the pressure: find more fall, or break the pressure on the way.</source>
        <translation>Ningún tubo de la tabla trae tanto y aguanta la presión: busque más caída, o corte la presión en el camino.</translation>
    </message>
    <message>
        <source>A pipe of %1 outside diameter would bring it.</source>
        <translation>Lo traería un tubo de %1 de diámetro exterior.</translation>
    </message>
    <message>
        <source>A pipe of %1 outside diameter, class %2, would bring it.</source>
        <translation>Lo traería un tubo de %1 de diámetro exterior, clase %2.</translation>
    </message>
    <message>
        <source>Only %2 come through %1; %3 are wanted.</source>
        <translation>Solo pasan %2 por %1; se quieren %3.</translation>
    </message>
    <message>
        <source>The pipe to the field goes through the lining. A tank of plaster leaks first where a pipe passes it, and the leak soaks the ground below. A siphon over the rim needs no hole.</source>
        <translation>La tubería al campo atraviesa el revestimiento. Un tanque de repello pierde agua primero donde lo atraviesa un tubo, y la fuga empapa el terreno de abajo. Un sifón sobre el borde no necesita hueco.</translation>
    </message>
    <message>
        <source>The top of the siphon lies %1 above the water; at this height above the sea it can be %2 at most. Lay the top nearer to the rim, or let the water sink less deep.</source>
        <translation>La parte alta del sifón está %1 sobre el agua; a esta altura sobre el mar puede estar a lo más %2. Ponga la parte alta más cerca del borde, o deje bajar menos el agua.</translation>
    </message>
    <message>
        <source>The siphon breaks: its top lies %1 above the water, and the pipe sucks too hard there. Lay the top lower.</source>
        <translation>El sifón se corta: su parte alta está %1 sobre el agua, y allí el tubo succiona demasiado. Ponga la parte alta más baja.</translation>
    </message>
    <message>
        <source>Wide open, the siphon breaks: its top lies %1 above the water, and the pipe sucks too hard there. Put a valve at its lower end and open it to %2 at most, or lay the top lower.</source>
        <translation>Abierto del todo, el sifón se corta: su parte alta está %1 sobre el agua, y allí el tubo succiona demasiado. Ponga una válvula en su extremo de abajo y ábrala a lo más hasta %2, o ponga la parte alta más baja.</translation>
    </message>
    <message>
        <source>Water runs through the siphon at %1; under %2 it does not carry air down, which gathers at the top and stops it in time. Take a narrower pipe, or put a plug at the top to fill it anew.</source>
        <translation>El agua corre por el sifón a %1; por debajo de %2 no arrastra el aire hacia abajo, y este se junta en la parte alta y con el tiempo la detiene. Tome un tubo más angosto, o ponga en la parte alta un tapón para llenarlo de nuevo.</translation>
    </message>
    <message>
        <source>The outlet chosen (%1) wants a head of %2. Left are %3 with the tank full and %4 when it is nearly empty: %5. Lay the end of the line lower, take a wider pipe, or choose an outlet that needs less.</source>
        <translation>La salida elegida (%1) necesita una carga de %2. Quedan %3 con el tanque lleno y %4 cuando está casi vacío: %5. Ponga más bajo el extremo de la tubería, tome un tubo más ancho, o elija una salida que necesite menos.</translation>
    </message>
    <message>
        <source>How hard it rains here at worst is not known; the overflow is reckoned for %1. Ask the weather station for the heaviest rain of ten minutes or a quarter of an hour.</source>
        <translation>No se sabe qué tan fuerte llueve aquí en el peor caso; el rebosadero se calcula para %1. Pregunte en la estación meteorológica por la lluvia más fuerte de diez minutos o un cuarto de hora.</translation>
    </message>
    <message>
        <source>A notch %1 wide would leave it.</source>
        <translation>Con una muesca de %1 de ancho quedaría.</translation>
    </message>
    <message>
        <source>An overflow pipe of %1 inside diameter would leave it.</source>
        <translation>Con un tubo de rebosadero de %1 de diámetro interior quedaría.</translation>
    </message>
    <message>
        <source>Give more freeboard, or lead less water in during a storm.</source>
        <translation>Dé más borde libre, o haga llegar menos agua durante un aguacero.</translation>
    </message>
    <message>
        <source>If leaves block the overflow, water runs over the rim anywhere, up to %1 deep, and nobody knows where it goes. Lay a part of the rim lower, on the side where it does no harm.</source>
        <translation>Si las hojas tapan el rebosadero, el agua pasa por encima del borde en cualquier parte, hasta %1 de hondo, y nadie sabe adónde va. Haga más baja una parte del borde, en el lado donde no hace daño.</translation>
    </message>
    <message>
        <source>In a storm the water in the spill path would stand %1 deep; the channel is %2 deep. Dig it deeper or wider.</source>
        <translation>En un aguacero el agua en el camino de desagüe tendría %1 de hondo; el canal tiene %2 de hondo. Cávelo más hondo o más ancho.</translation>
    </message>
    <message>
        <source>In a storm the water runs down the spill path at %1 and may dig itself in: %2 bears about %3. Make the path wider or flatter, or pave it with stones.</source>
        <translation>En un aguacero el agua baja por el camino de desagüe a %1 y puede socavarlo: el fondo (%2) aguanta cerca de %3. Haga el camino más ancho o menos inclinado, o empiédrelo.</translation>
    </message>
    <message>
        <source>Make it deeper, longer or wider, or lead less water through it.</source>
        <translation>Hágalo más hondo, más largo o más ancho, o haga pasar menos agua por él.</translation>
    </message>
    <message>
        <source>A trap %1 long and %2 wide inside would hold them.</source>
        <translation>Un desarenador de %1 de largo y %2 de ancho por dentro los retendría.</translation>
    </message>
    <message>
        <source>The silt trap holds grains down to %1 back; it should hold those of %2 too.</source>
        <translation>El desarenador retiene granos hasta de %1; debería retener también los de %2.</translation>
    </message>
    <message>
        <source>The tank leaks %1, about %2. Look for cracks and for wet ground below it, and test again in some weeks.</source>
        <translation>El tanque pierde %1, cerca de %2. Busque grietas y terreno mojado más abajo, y repita la prueba en algunas semanas.</translation>
    </message>
    <message>
        <source>The tank leaks %1, about %2.</source>
        <translation>El tanque pierde %1, cerca de %2.</translation>
    </message>
    <message>
        <source>That can soften the ground below it: let no more water in, empty it and mend it.</source>
        <translation>Eso puede ablandar el terreno de abajo: no deje entrar más agua, vacíelo y repárelo.</translation>
    </message>
    <message>
        <source>Let the water sink until it stops: the leak is at that height. Mend the cracks there.</source>
        <translation>Deje bajar el agua hasta que se detenga: la fuga está a esa altura. Repare allí las grietas.</translation>
    </message>
    <message>
        <source>Against the bucket the tank gained %1, more than the readings&apos; error of %2: water ran in, or a reading is wrong. Shut all inlets and test again in dry weather.</source>
        <translation>Comparado con el balde, el tanque ganó %1, más que el error de las mediciones de %2: entró agua, o una medición está mal. Cierre todas las entradas y repita la prueba con tiempo seco.</translation>
    </message>
    <message>
        <source>The leak test shows %1, no more than the readings&apos; error of %2, so it tells nothing. Let it run longer.</source>
        <translation>La prueba de fuga muestra %1, no más que el error de las mediciones de %2, así que no dice nada. Déjela más tiempo.</translation>
    </message>
    <message>
        <source>Of the water in the line, by thermometer; cold water flows a little slower, and over 20 °C plastic pipe bears less.</source>
        <translation>Del agua en la tubería, con termómetro; el agua fría corre un poco más despacio, y por encima de 20 °C el tubo de plástico aguanta menos.</translation>
    </message>
    <message>
        <source>Level distance along the pipe&apos;s way from its inlet at the source to this point; measure with a tape held level.</source>
        <translation>Distancia a nivel a lo largo del recorrido de la tubería, desde su entrada en la fuente hasta este punto; mida con una cinta a nivel.</translation>
    </message>
    <message>
        <source>Height of the pipe at this point over the rim of the tank, by water level tube; a point lower than the rim is negative.</source>
        <translation>Altura de la tubería en este punto sobre el borde del tanque, con manguera de nivel; un punto más bajo que el borde es negativo.</translation>
    </message>
    <message>
        <source>Depth of water over the middle of the pipe&apos;s inlet at the source when it is lowest.</source>
        <translation>Profundidad del agua sobre el centro de la entrada de la tubería en la fuente, cuando está más baja.</translation>
    </message>
    <message>
        <source>What the line shall bring, at most what the source gives. Leave empty if anything will do.</source>
        <translation>Lo que debe traer la tubería, a lo más lo que da la fuente. Deje vacío si cualquier cantidad sirve.</translation>
    </message>
    <message>
        <source>Strength of the polyethylene, printed along the pipe from the source.</source>
        <translation>Resistencia del polietileno, impresa a lo largo del tubo de la fuente.</translation>
    </message>
    <message>
        <source>What the shop calls the size of the pipe from the source; it is printed along it.</source>
        <translation>Cómo llama la tienda al tamaño del tubo de la fuente; está impreso a lo largo de él.</translation>
    </message>
    <message>
        <source>Pressure that the pipe from the source is made for, printed on it as PN.</source>
        <translation>Presión para la que está hecho el tubo de la fuente, impresa en él como PN.</translation>
    </message>
    <message>
        <source>Inside diameter of the pipe from the source, measured at a clean cut. Leave empty to take it from the table of pipes.</source>
        <translation>Diámetro interior del tubo de la fuente, medido en un corte limpio. Deje vacío para tomarlo de la tabla de tubos.</translation>
    </message>
    <message>
        <source>Sharp bends with a fitting between source and tank; the pipe&apos;s own wide curves do not count.</source>
        <translation>Codos cerrados con accesorio entre la fuente y el tanque; las curvas amplias del tubo mismo no cuentan.</translation>
    </message>
    <message>
        <source>Valves between source and tank, reckoned wide open.</source>
        <translation>Válvulas entre la fuente y el tanque, calculadas como abiertas del todo.</translation>
    </message>
    <message>
        <source>Level distance along the pipe&apos;s way from where it leaves the tank to this point; measure with a tape held level.</source>
        <translation>Distancia a nivel por el recorrido del tubo, de donde sale del tanque a este punto; mida con una cinta sostenida a nivel.</translation>
    </message>
    <message>
        <source>Height of the field pipe at this point over the rim of the tank, by water level tube; most points lie lower and are negative.</source>
        <translation>Altura del tubo al campo en este punto sobre el borde del tanque, con la manguera de nivel; la mayoría de los puntos queda más abajo y es negativa.</translation>
    </message>
    <message>
        <source>Whether the pipe climbs over the rim and works as a siphon; else it goes through the lining, where tanks leak first.</source>
        <translation>Si el tubo sube por encima del borde y trabaja como sifón; si no, atraviesa el revestimiento, donde los tanques pierden agua primero.</translation>
    </message>
    <message>
        <source>Height of the middle of the pipe over the rim where it is highest; the lower, the better it runs.</source>
        <translation>Altura del centro del tubo sobre el borde donde es más alto; cuanto más bajo, mejor corre.</translation>
    </message>
    <message>
        <source>What stands at the end of the line; each kind needs its own head of water.</source>
        <translation>Lo que está al final de la tubería; cada clase necesita su propia carga de agua.</translation>
    </message>
    <message>
        <source>How many of them run at the same time.</source>
        <translation>Cuántas de ellas corren al mismo tiempo.</translation>
    </message>
    <message>
        <source>Strength of the polyethylene, printed along the pipe to the field.</source>
        <translation>Resistencia del polietileno, impresa a lo largo del tubo al campo.</translation>
    </message>
    <message>
        <source>What the shop calls the size of the pipe to the field; it is printed along it.</source>
        <translation>El nombre que da la tienda al tamaño del tubo al campo; está impreso en él.</translation>
    </message>
    <message>
        <source>Pressure that the pipe to the field is made for, printed on it as PN.</source>
        <translation>Presión para la que está hecho el tubo al campo, impresa en él como PN.</translation>
    </message>
    <message>
        <source>Inside diameter of the pipe to the field, measured at a clean cut. Leave empty to take it from the table of pipes.</source>
        <translation>Diámetro interior del tubo al campo, medido en un corte limpio. Deje vacío para tomarlo de la tabla de tubos.</translation>
    </message>
    <message>
        <source>Sharp bends with a fitting between tank and field, those at the rim counted; the pipe&apos;s own wide curves do not count.</source>
        <translation>Dobleces cerrados con accesorio entre el tanque y el campo, contando los del borde; las curvas amplias del propio tubo no cuentan.</translation>
    </message>
    <message>
        <source>Valves between tank and field, reckoned wide open.</source>
        <translation>Válvulas entre el tanque y el campo, calculadas totalmente abiertas.</translation>
    </message>
    <message>
        <source>Where spare water leaves: a notch in the rim, or a pipe below it.</source>
        <translation>Por dónde sale el agua sobrante: una muesca en el borde, o un tubo debajo de él.</translation>
    </message>
    <message>
        <source>Clear width of the notch along the rim; its sill lies at the overflow level.</source>
        <translation>Ancho interior de la muesca a lo largo del borde; su umbral queda al nivel del rebosadero.</translation>
    </message>
    <message>
        <source>Inside diameter of the overflow pipe; its inside bottom lies at the overflow level.</source>
        <translation>Diámetro interior del tubo del rebosadero; su fondo por dentro queda al nivel del rebosadero.</translation>
    </message>
    <message>
        <source>From its inlet in the tank to where it ends over the spill path.</source>
        <translation>De su entrada en el tanque a donde termina sobre el canal de desagüe.</translation>
    </message>
    <message>
        <source>How much lower the end of the overflow pipe lies than its inlet.</source>
        <translation>Cuánto más abajo queda el extremo del tubo del rebosadero que su entrada.</translation>
    </message>
    <message>
        <source>Heaviest rain that falls here in some minutes, counted for an hour; ask the weather station. Leave empty if not known.</source>
        <translation>Lluvia más fuerte que cae aquí en unos minutos, contada por hora; pregunte en la estación meteorológica. Deje vacío si no se sabe.</translation>
    </message>
    <message>
        <source>Length of rim laid a little lower, so that water leaves there and nowhere else when the overflow is blocked; 0 for none.</source>
        <translation>Largo de borde puesto un poco más bajo, para que el agua salga por ahí y por ninguna otra parte cuando el rebosadero se tapa; 0 si no hay.</translation>
    </message>
    <message>
        <source>How much lower this part of the rim is laid; check it with water in a clear tube.</source>
        <translation>Cuánto más baja se hace esta parte del borde; revíselo con agua en un tubo transparente.</translation>
    </message>
    <message>
        <source>Width of the bed of the channel that leads spare water away from the tank.</source>
        <translation>Ancho del fondo del canal que aleja del tanque el agua sobrante.</translation>
    </message>
    <message>
        <source>Depth of this channel from its edge down to its bed.</source>
        <translation>Profundidad de este canal, de su orilla a su fondo.</translation>
    </message>
    <message>
        <source>How far each side of the channel leans outward for each unit of height; 0 is upright.</source>
        <translation>Cuánto se inclina hacia afuera cada lado del canal por cada unidad de altura; 0 es a plomo.</translation>
    </message>
    <message>
        <source>Drop of the bed over 100 of length where it is steepest; measure it with a water level tube.</source>
        <translation>Caída del fondo por cada 100 de largo donde es más empinado; mídala con una manguera de nivel.</translation>
    </message>
    <message>
        <source>What the water of the spill path runs over.</source>
        <translation>Sobre qué corre el agua del canal de desagüe.</translation>
    </message>
    <message>
        <source>The trap is made long enough for this grain to sink; 0.1 mm is fine sand that can just be felt between the fingers.</source>
        <translation>El desarenador se hace tan largo que este grano alcanza a hundirse; 0.1 mm es arena fina que apenas se siente entre los dedos.</translation>
    </message>
    <message>
        <source>Most water that passes the trap at a time. Leave empty to take what source line and storm bring.</source>
        <translation>La mayor cantidad de agua que pasa por el desarenador a la vez. Deje vacío para tomar lo que traen la tubería de la fuente y el aguacero.</translation>
    </message>
    <message>
        <source>Dry weight of what settles overnight from muddy water as it comes in; let a full bucket stand, dry the mud and weigh it.</source>
        <translation>Peso seco de lo que se asienta en una noche del agua con lodo, tal como entra; deje reposar un balde lleno, seque el lodo y péselo.</translation>
    </message>
    <message>
        <source>Time in the wet season after which someone empties the trap.</source>
        <translation>Tiempo en la época de lluvias después del cual alguien vacía el desarenador.</translation>
    </message>
    <message>
        <source>Inside length, along the water, of a trap that stands or is planned by eye. Leave empty if there is none.</source>
        <translation>Largo por dentro, en el sentido del agua, de un desarenador que ya existe o se planea al ojo. Deje vacío si no hay.</translation>
    </message>
    <message>
        <source>Inside width, across the water, of that trap. Leave empty if there is none.</source>
        <translation>Ancho por dentro, atravesado al agua, de ese desarenador. Deje vacío si no hay.</translation>
    </message>
    <message>
        <source>Water over the mud in that trap just before it is cleaned. Leave empty if there is none.</source>
        <translation>Agua sobre el lodo en ese desarenador justo antes de limpiarlo. Deje vacío si no hay.</translation>
    </message>
    <message>
        <source>Water over the finished floor while the test runs. Leave empty if the tank is full.</source>
        <translation>Agua sobre el piso terminado mientras dura la prueba. Deje vacío si el tanque está lleno.</translation>
    </message>
    <message>
        <source>How far the water in the tank sank between the two readings, on a scale fixed to the wall; nothing may flow in or out.</source>
        <translation>Cuánto bajó el agua del tanque entre las dos lecturas, en una escala fijada a la pared; no debe entrar ni salir nada.</translation>
    </message>
    <message>
        <source>From the first reading to the second; a day or longer, without rain.</source>
        <translation>De la primera lectura a la segunda; un día o más, sin lluvia.</translation>
    </message>
    <message>
        <source>How far one reading of the scale may be wrong; read it twice and see.</source>
        <translation>Cuánto puede fallar una lectura de la escala; léala dos veces y vea.</translation>
    </message>
    <message>
        <source>Temperature of the water</source>
        <translation>Temperatura del agua</translation>
    </message>
    <message>
        <source>Distance along the line</source>
        <translation>Distancia por la tubería</translation>
    </message>
    <message>
        <source>Height over the rim</source>
        <translation>Altura sobre el borde</translation>
    </message>
    <message>
        <source>Water over the inlet</source>
        <translation>Agua sobre la entrada</translation>
    </message>
    <message>
        <source>Flow wanted from the source</source>
        <translation>Caudal deseado de la fuente de agua</translation>
    </message>
    <message>
        <source>Source pipe: grade</source>
        <translation>Tubo de la fuente: grado</translation>
    </message>
    <message>
        <source>Source pipe: outside diameter</source>
        <translation>Tubo de la fuente: diámetro exterior</translation>
    </message>
    <message>
        <source>Source pipe: pressure class</source>
        <translation>Tubo de la fuente: clase de presión</translation>
    </message>
    <message>
        <source>Source pipe: bore, measured</source>
        <translation>Tubo de la fuente: diámetro interior medido</translation>
    </message>
    <message>
        <source>Source pipe: elbows</source>
        <translation>Tubo de la fuente: codos</translation>
    </message>
    <message>
        <source>Source pipe: valves</source>
        <translation>Tubo de la fuente: válvulas</translation>
    </message>
    <message>
        <source>Siphon over the rim</source>
        <translation>Sifón por encima del borde</translation>
    </message>
    <message>
        <source>Top of the siphon over the rim</source>
        <translation>Punto más alto del sifón sobre el borde</translation>
    </message>
    <message>
        <source>Water let out through</source>
        <translation>El agua sale por</translation>
    </message>
    <message>
        <source>Open at a time</source>
        <translation>Abiertas a la vez</translation>
    </message>
    <message>
        <source>Field pipe: grade</source>
        <translation>Tubo al campo: grado</translation>
    </message>
    <message>
        <source>Field pipe: outside diameter</source>
        <translation>Tubo al campo: diámetro exterior</translation>
    </message>
    <message>
        <source>Field pipe: pressure class</source>
        <translation>Tubo al campo: clase de presión</translation>
    </message>
    <message>
        <source>Field pipe: bore, measured</source>
        <translation>Tubo al campo: diámetro interior medido</translation>
    </message>
    <message>
        <source>Field pipe: elbows</source>
        <translation>Tubo al campo: codos</translation>
    </message>
    <message>
        <source>Field pipe: valves</source>
        <translation>Tubo al campo: válvulas</translation>
    </message>
    <message>
        <source>Overflow through</source>
        <translation>El agua rebosa por</translation>
    </message>
    <message>
        <source>Width of the notch</source>
        <translation>Ancho de la muesca</translation>
    </message>
    <message>
        <source>Overflow pipe: inside diameter</source>
        <translation>Tubo del rebosadero: diámetro interior</translation>
    </message>
    <message>
        <source>Overflow pipe: length</source>
        <translation>Tubo del rebosadero: largo</translation>
    </message>
    <message>
        <source>Overflow pipe: fall</source>
        <translation>Tubo del rebosadero: caída</translation>
    </message>
    <message>
        <source>Heaviest short rain</source>
        <translation>Lluvia corta más fuerte</translation>
    </message>
    <message>
        <source>Low part of the rim: length</source>
        <translation>Parte baja del borde: largo</translation>
    </message>
    <message>
        <source>Low part of the rim: lower by</source>
        <translation>Parte baja del borde: más baja en</translation>
    </message>
    <message>
        <source>Spill path: bottom width</source>
        <translation>Canal de desagüe: ancho del fondo</translation>
    </message>
    <message>
        <source>Spill path: depth</source>
        <translation>Canal de desagüe: profundidad</translation>
    </message>
    <message>
        <source>Spill path: side slope</source>
        <translation>Canal de desagüe: talud de los lados</translation>
    </message>
    <message>
        <source>Spill path: fall</source>
        <translation>Canal de desagüe: caída</translation>
    </message>
    <message>
        <source>Spill path: bed</source>
        <translation>Canal de desagüe: fondo</translation>
    </message>
    <message>
        <source>Smallest grain to keep back</source>
        <translation>Grano más pequeño que se retiene</translation>
    </message>
    <message>
        <source>Flow through the silt trap</source>
        <translation>Caudal por el desarenador</translation>
    </message>
    <message>
        <source>Silt in the water</source>
        <translation>Sedimento en el agua</translation>
    </message>
    <message>
        <source>Silt trap cleaned every</source>
        <translation>El desarenador se limpia cada</translation>
    </message>
    <message>
        <source>Silt trap as it is: length</source>
        <translation>Desarenador como está: largo</translation>
    </message>
    <message>
        <source>Silt trap as it is: width</source>
        <translation>Desarenador como está: ancho</translation>
    </message>
    <message>
        <source>Silt trap as it is: water depth</source>
        <translation>Desarenador como está: profundidad del agua</translation>
    </message>
    <message>
        <source>Water in the tank during the test</source>
        <translation>Agua en el tanque durante la prueba</translation>
    </message>
    <message>
        <source>Drop in the tank</source>
        <translation>Descenso en el tanque</translation>
    </message>
    <message>
        <source>Drop in the bucket</source>
        <translation>Descenso en el balde</translation>
    </message>
    <message>
        <source>Time between the readings</source>
        <translation>Tiempo entre las lecturas</translation>
    </message>
    <message>
        <source>Error of one reading</source>
        <translation>Error de una lectura</translation>
    </message>
    <message>
        <source>north</source>
        <translation>norte</translation>
    </message>
    <message>
        <source>north-east</source>
        <translation>noreste</translation>
    </message>
    <message>
        <source>east</source>
        <translation>este</translation>
    </message>
    <message>
        <source>south-east</source>
        <translation>sureste</translation>
    </message>
    <message>
        <source>south</source>
        <translation>sur</translation>
    </message>
    <message>
        <source>south-west</source>
        <translation>suroeste</translation>
    </message>
    <message>
        <source>west</source>
        <translation>oeste</translation>
    </message>
    <message>
        <source>north-west</source>
        <translation>noroeste</translation>
    </message>
    <message>
        <source>The ground is level.</source>
        <translation>El terreno está a nivel.</translation>
    </message>
    <message>
        <source>The ground falls %1 towards the %2.</source>
        <translation>El terreno tiene una caída de %1 hacia el %2.</translation>
    </message>
    <message>
        <source>The platform lies %1; the rim is level with it.</source>
        <translation>La plataforma queda %1; el borde está a su nivel.</translation>
    </message>
    <message>
        <source>To make it, %1 are cut and %2 filled in, rammed in layers.</source>
        <translation>Para hacerla se cortan %1 y se rellenan %2, apisonando por capas.</translation>
    </message>
    <message>
        <source>First strip %1 of topsoil and keep it apart: it belongs on the beds.</source>
        <translation>Primero retire %1 de tierra vegetal y guárdela aparte: es para las camas.</translation>
    </message>
    <message>
        <source>The whole tank just stands in natural ground: the platform may be no higher.</source>
        <translation>El tanque entero cabe justo en terreno natural: la plataforma no puede ir más alta.</translation>
    </message>
    <message>
        <source>The whole tank stands in natural ground; where it is least, %1 of it lie over the pit.</source>
        <translation>El tanque entero queda en terreno natural; donde hay menos, quedan %1 de él sobre la excavación.</translation>
    </message>
    <message>
        <source>Part of the tank would stand on fill: natural ground ends %1 short of the pit.</source>
        <translation>Parte del tanque quedaría sobre relleno: al terreno natural le faltan %1 para llegar a la excavación.</translation>
    </message>
    <message>
        <source>It would not with the platform %1, or lower.</source>
        <translation>No sería así con la plataforma %1, o más baja.</translation>
    </message>
    <message>
        <source>The fill takes all that is dug; no spoil is left over.</source>
        <translation>El relleno usa todo lo que se cava; no sobra tierra.</translation>
    </message>
    <message>
        <source>As it lies, %1 of ground are left over; how large the heap gets depends on the soil, which is not known.</source>
        <translation>Sobran %1 de tierra en banco; el tamaño del montón depende del suelo, que no se conoce.</translation>
    </message>
    <message>
        <source>Left over are %1 of loose ground: a heap %2 high and %3 across.</source>
        <translation>Sobran %1 de tierra suelta: un montón de %2 de alto y %3 de ancho.</translation>
    </message>
    <message>
        <source>Heap it to the %1 of the tank, its toe %2 back from the pit edge; never nearer than %3.</source>
        <translation>Amontónela al %1 del tanque, con el pie a %2 de la orilla de la excavación; nunca a menos de %3.</translation>
    </message>
    <message>
        <source>Later spread it thin on beds below, or raise the lips of terraces well away with it.</source>
        <translation>Después espárzala en capa delgada en camas de más abajo, o levante con ella los filos de terrazas bien alejadas.</translation>
    </message>
    <message>
        <source>Never heap it uphill of the pit, where rain washes it in, nor on the downhill edge, which its weight can bring down.</source>
        <translation>Nunca la amontone ladera arriba de la excavación, donde la lluvia la arrastra adentro, ni en el filo ladera abajo, que puede derrumbarse con su peso.</translation>
    </message>
    <message>
        <source>Never heap it beside the pit edge or on the edge of a terrace, which its weight can bring down.</source>
        <translation>Nunca la amontone junto a la orilla de la excavación ni en el filo de una terraza, que puede derrumbarse con su peso.</translation>
    </message>
    <message>
        <source>Middle of the tank, east</source>
        <translation>Centro del tanque, este</translation>
    </message>
    <message>
        <source>Middle of the tank, north</source>
        <translation>Centro del tanque, norte</translation>
    </message>
    <message>
        <source>Tank turned by</source>
        <translation>Tanque girado</translation>
    </message>
    <message>
        <source>Level of the platform</source>
        <translation>Nivel de la plataforma</translation>
    </message>
    <message>
        <source>Platform over the ground at the middle</source>
        <translation>Plataforma sobre el terreno en el centro</translation>
    </message>
    <message>
        <source>Walkway round the rim</source>
        <translation>Pasillo alrededor del borde</translation>
    </message>
    <message>
        <source>Batter of the cut face</source>
        <translation>Talud de la cara del corte</translation>
    </message>
    <message>
        <source>Batter of the fill face</source>
        <translation>Talud de la cara del relleno</translation>
    </message>
    <message>
        <source>Topsoil stripped</source>
        <translation>Tierra vegetal retirada</translation>
    </message>
    <message>
        <source>Compacted fill per ground dug</source>
        <translation>Relleno apisonado por tierra cavada</translation>
    </message>
    <message>
        <source>Direction of the spoil heap</source>
        <translation>Rumbo del montón de tierra sacada</translation>
    </message>
    <message>
        <source>Where the middle of the tank lies east of the zero of the spot heights; west of it is negative.</source>
        <translation>Cuánto queda el centro del tanque al este del cero de las cotas; al oeste es negativo.</translation>
    </message>
    <message>
        <source>Where the middle of the tank lies north of the zero of the spot heights; south of it is negative.</source>
        <translation>Cuánto queda el centro del tanque al norte del cero de las cotas; al sur es negativo.</translation>
    </message>
    <message>
        <source>How high the level place round the tank lies: so low that the whole tank stands in natural ground, so that cut and fill balance, or as you give it.</source>
        <translation>A qué altura queda el lugar a nivel alrededor del tanque: tan bajo que el tanque entero queda en terreno natural, de modo que corte y relleno se igualen, o como se anote.</translation>
    </message>
    <message>
        <source>Height of the platform, which the rim is level with, over the natural ground at the middle of the tank; below that ground it is negative.</source>
        <translation>Altura de la plataforma, que está al nivel del borde, sobre el terreno natural en el centro del tanque; por debajo de ese terreno es negativa.</translation>
    </message>
    <message>
        <source>Level ground left all round outside the rim collar, to walk and carry on.</source>
        <translation>Terreno a nivel que se deja todo alrededor, por fuera del collar del borde, para caminar y cargar.</translation>
    </message>
    <message>
        <source>How far the face cut into the hill leans back for each unit of height; look at old cuts in the same soil that still stand.</source>
        <translation>Cuánto se inclina hacia atrás la cara cortada en la ladera por cada unidad de altura; mire cortes viejos en el mismo suelo que todavía se tienen en pie.</translation>
    </message>
    <message>
        <source>Depth of the dark soil with roots in the trial pit, which is taken off first and kept for beds.</source>
        <translation>Profundidad en la calicata de la tierra oscura con raíces, que se saca primero y se guarda para las camas.</translation>
    </message>
    <message>
        <source>Volume that ground fills once it is placed in layers and rammed, for each unit dug: 0.90 when it packs closer than it lay.</source>
        <translation>Volumen que ocupa la tierra ya colocada en capas y apisonada, por cada unidad cavada: 0.90 cuando queda más apretada que como estaba.</translation>
    </message>
    <message>
        <source>Compass direction from the tank to the heap: north 0, east 90, south 180. Leave empty to have it put across the fall.</source>
        <translation>Rumbo de la brújula del tanque al montón: norte 0, este 90, sur 180. Deje vacío para que se ponga de través a la caída.</translation>
    </message>
    <message>
        <source>No ground can be made of the spot heights: a surface needs three at different places. Survey more, all round the tank.</source>
        <translation>Con las cotas no se puede formar el terreno: una superficie necesita tres en lugares distintos. Mida más, todo alrededor del tanque.</translation>
    </message>
    <message>
        <source>No ground can be made of the spot heights: they all lie on one line. Survey some to the side of it.</source>
        <translation>Con las cotas no se puede formar el terreno: están todas en una misma línea. Mida algunas a un lado de ella.</translation>
    </message>
    <message>
        <source>No ground can be made of the spot heights: they could not be joined to triangles. Look for points that stand nearly at the same place, and take them out.</source>
        <translation>Con las cotas no se puede formar el terreno: no se pudieron unir en triángulos. Busque puntos que están casi en el mismo lugar y quítelos.</translation>
    </message>
    <message>
        <source>The platform does not lie wholly inside the survey. Move the tank, or survey more ground around it.</source>
        <translation>La plataforma no queda toda dentro del terreno medido. Mueva el tanque, o mida más terreno a su alrededor.</translation>
    </message>
    <message>
        <source>The ground is as steep as a face of cut or fill, which so never meets it. Choose flatter ground, or a steeper batter if the soil bears it.</source>
        <translation>El terreno es tan empinado como una cara del corte o del relleno, que así nunca lo encuentra. Elija un terreno más plano, o un talud más empinado si el suelo lo aguanta.</translation>
    </message>
    <message>
        <source>At no level do cut and fill balance here. Give the level of the platform, or have the tank stand in natural ground.</source>
        <translation>Aquí el corte y el relleno no se igualan a ningún nivel. Anote el nivel de la plataforma, o ponga el tanque en terreno natural.</translation>
    </message>
    <message>
        <source>Spot heights that look doubtful: %1, the first in row %2. Each stands far above, below or away from the others, or repeats one. Look at the place and mend or delete the row.</source>
        <translation>Cotas que parecen dudosas: %1, la primera en la fila %2. Cada una está muy por encima, muy por debajo o muy lejos de las otras, o repite otra. Vea el lugar y corrija o borre la fila.</translation>
    </message>
    <message>
        <source>Part of the tank would stand on fill: where it is worst, natural ground ends %1 short of floor or wall. Fill settles and cracks the lining. The platform lies %2; lay it %3, or lower.</source>
        <translation>Parte del tanque quedaría sobre relleno: donde es peor, al terreno natural le faltan %1 para llegar al piso o a la pared. El relleno se asienta y raja el revestimiento. La plataforma queda %2; póngala %3, o más baja.</translation>
    </message>
    <message>
        <source>as high as the natural ground at the middle of the tank</source>
        <translation>a la altura del terreno natural en el centro del tanque</translation>
    </message>
    <message>
        <source>%1 over the natural ground at the middle of the tank</source>
        <translation>a %1 por encima del terreno natural en el centro del tanque</translation>
    </message>
    <message>
        <source>%1 below the natural ground at the middle of the tank</source>
        <translation>a %1 por debajo del terreno natural en el centro del tanque</translation>
    </message>
    <message>
        <source>roughness, plastic pipe</source>
        <translation>rugosidad, tubo de plástico</translation>
    </message>
    <message>
        <source>roughness, steel pipe</source>
        <translation>rugosidad, tubo de acero</translation>
    </message>
    <message>
        <source>roughness, galvanised pipe</source>
        <translation>rugosidad, tubo galvanizado</translation>
    </message>
    <message>
        <source>roughness, cast iron pipe</source>
        <translation>rugosidad, tubo de hierro fundido</translation>
    </message>
    <message>
        <source>roughness, concrete pipe</source>
        <translation>rugosidad, tubo de concreto</translation>
    </message>
    <message>
        <source>Hazen-Williams C, plastic pipe</source>
        <translation>C de Hazen-Williams, tubo de plástico</translation>
    </message>
    <message>
        <source>Hazen-Williams C, galvanised pipe</source>
        <translation>C de Hazen-Williams, tubo galvanizado</translation>
    </message>
    <message>
        <source>loss, sharp entrance</source>
        <translation>pérdida, entrada de borde vivo</translation>
    </message>
    <message>
        <source>loss, entrance that juts out</source>
        <translation>pérdida, entrada que sobresale</translation>
    </message>
    <message>
        <source>loss, rounded entrance</source>
        <translation>pérdida, entrada redondeada</translation>
    </message>
    <message>
        <source>loss, foot valve</source>
        <translation>pérdida, válvula de pie</translation>
    </message>
    <message>
        <source>loss, 90° elbow</source>
        <translation>pérdida, codo de 90°</translation>
    </message>
    <message>
        <source>loss, wide 90° elbow</source>
        <translation>pérdida, codo amplio de 90°</translation>
    </message>
    <message>
        <source>loss, 45° elbow</source>
        <translation>pérdida, codo de 45°</translation>
    </message>
    <message>
        <source>loss, tee, straight on</source>
        <translation>pérdida, te, paso recto</translation>
    </message>
    <message>
        <source>loss, tee, into the branch</source>
        <translation>pérdida, te, hacia el ramal</translation>
    </message>
    <message>
        <source>loss, gate valve, open</source>
        <translation>pérdida, válvula de compuerta, abierta</translation>
    </message>
    <message>
        <source>loss, gate valve, half closed</source>
        <translation>pérdida, válvula de compuerta, medio cerrada</translation>
    </message>
    <message>
        <source>loss, globe valve, open</source>
        <translation>pérdida, válvula de globo, abierta</translation>
    </message>
    <message>
        <source>loss, ball valve, open</source>
        <translation>pérdida, válvula de bola, abierta</translation>
    </message>
    <message>
        <source>loss, check valve</source>
        <translation>pérdida, válvula de retención</translation>
    </message>
    <message>
        <source>loss, water meter</source>
        <translation>pérdida, medidor de agua</translation>
    </message>
    <message>
        <source>loss, screen</source>
        <translation>pérdida, rejilla</translation>
    </message>
    <message>
        <source>head kept over vapour in a pipe</source>
        <translation>carga que se guarda sobre el vapor en un tubo</translation>
    </message>
    <message>
        <source>head kept over vapour at the top of a siphon</source>
        <translation>carga que se guarda sobre el vapor en lo alto de un sifón</translation>
    </message>
    <message>
        <source>Manning&apos;s n, plastic pipe</source>
        <translation>n de Manning, tubo de plástico</translation>
    </message>
    <message>
        <source>Manning&apos;s n, plaster</source>
        <translation>n de Manning, repello</translation>
    </message>
    <message>
        <source>Manning&apos;s n, bare earth</source>
        <translation>n de Manning, tierra desnuda</translation>
    </message>
    <message>
        <source>Manning&apos;s n, short grass</source>
        <translation>n de Manning, pasto corto</translation>
    </message>
    <message>
        <source>Manning&apos;s n, stone pitching</source>
        <translation>n de Manning, empedrado</translation>
    </message>
    <message>
        <source>broad sill, flow in theory</source>
        <translation>umbral ancho, caudal teórico</translation>
    </message>
    <message>
        <source>broad sill, share of the flow in theory</source>
        <translation>umbral ancho, parte del caudal teórico</translation>
    </message>
    <message>
        <source>opening with a sharp edge</source>
        <translation>abertura de borde vivo</translation>
    </message>
    <message>
        <source>storm runoff, roof</source>
        <translation>escorrentía de aguacero, techo</translation>
    </message>
    <message>
        <source>storm runoff, woodland</source>
        <translation>escorrentía de aguacero, bosque</translation>
    </message>
    <message>
        <source>storm runoff, pasture</source>
        <translation>escorrentía de aguacero, pasto</translation>
    </message>
    <message>
        <source>storm runoff, tilled ground</source>
        <translation>escorrentía de aguacero, terreno labrado</translation>
    </message>
    <message>
        <source>storm runoff, bare packed ground</source>
        <translation>escorrentía de aguacero, suelo desnudo apretado</translation>
    </message>
    <message>
        <source>storm runoff, the tank itself</source>
        <translation>escorrentía de aguacero, el tanque mismo</translation>
    </message>
    <message>
        <source>silt trap, area over the least in theory</source>
        <translation>desarenador, área entre la mínima teórica</translation>
    </message>
    <message>
        <source>silt trap, speed factor</source>
        <translation>desarenador, factor de velocidad</translation>
    </message>
    <message>
        <source>silt, weight of the sinking grain</source>
        <translation>sedimento, peso del grano que se hunde</translation>
    </message>
    <message>
        <source>silt, weight of settled grains</source>
        <translation>sedimento, peso de los granos asentados</translation>
    </message>
    <message>
        <source>silt, share of grain in the mud</source>
        <translation>sedimento, parte de grano en el lodo</translation>
    </message>
    <message>
        <source>silt trap, length over width</source>
        <translation>desarenador, largo entre ancho</translation>
    </message>
    <message>
        <source>leak up to which a tank is tight</source>
        <translation>fuga hasta la que un tanque es estanco</translation>
    </message>
    <message>
        <source>leak up to which a tank is watched</source>
        <translation>fuga hasta la que un tanque se vigila</translation>
    </message>
    <message>
        <source>leak up to which a tank is mended in use</source>
        <translation>fuga hasta la que un tanque se repara en uso</translation>
    </message>
    <message>
        <source>leak of concrete tanks, drop allowed</source>
        <translation>fuga de tanques de concreto, descenso permitido</translation>
    </message>
    <message>
        <source>leak of concrete tanks, within</source>
        <translation>fuga de tanques de concreto, en un plazo de</translation>
    </message>
    <message>
        <source>leak of concrete tanks, share of the volume a day</source>
        <translation>fuga de tanques de concreto, parte del volumen por día</translation>
    </message>
    <message>
        <source>head wanted, %1</source>
        <translation>carga deseada, %1</translation>
    </message>
    <message>
        <source>usual flow, %1</source>
        <translation>caudal usual, %1</translation>
    </message>
    <message>
        <source>speed that scours, %1</source>
        <translation>velocidad que socava, %1</translation>
    </message>
    <message>
        <source>its way needs two points at least</source>
        <translation>su recorrido necesita al menos dos puntos</translation>
    </message>
    <message>
        <source>the points of its way do not follow one another</source>
        <translation>los puntos de su recorrido no van uno tras otro</translation>
    </message>
    <message>
        <source>a fitting lies outside its way</source>
        <translation>un accesorio queda fuera de su recorrido</translation>
    </message>
    <message>
        <source>its inlet does not lie under water; lay it lower</source>
        <translation>su entrada no queda bajo el agua; póngala más abajo</translation>
    </message>
    <message>
        <source>there is no fall from the water at its inlet to its outlet; lay the outlet lower</source>
        <translation>no hay caída del agua en su entrada a su salida; ponga la salida más abajo</translation>
    </message>
    <message>
        <source>no pipe of the table bears the pressure; break it on the way</source>
        <translation>ningún tubo de la tabla aguanta la presión; rompa la presión en el camino</translation>
    </message>
    <message>
        <source>no pipe of the table is wide enough; find more fall</source>
        <translation>ningún tubo de la tabla es lo bastante ancho; busque más caída</translation>
    </message>
    <message>
        <source>its top lies below its outlet, so it is no siphon</source>
        <translation>su punto más alto queda por debajo de su salida, así que no es un sifón</translation>
    </message>
    <message>
        <source>the outflow stops before the water is that low</source>
        <translation>el agua deja de salir antes de bajar tanto</translation>
    </message>
    <message>
        <source>the outflow dies away, so that the end is never reached</source>
        <translation>la salida de agua se va apagando, así que nunca se llega al final</translation>
    </message>
    <message>
        <source>the overflow pipe has no fall</source>
        <translation>el tubo del rebosadero no tiene caída</translation>
    </message>
    <message>
        <source>there is no rim to run over</source>
        <translation>no hay borde por donde rebosar</translation>
    </message>
    <message>
        <source>the grain is too large for the law by which it sinks</source>
        <translation>el grano es demasiado grande para la ley con que se hunde</translation>
    </message>
    <message>
        <source>water rose in the bucket: it rained; test again in dry weather</source>
        <translation>el agua subió en el balde: llovió; repita la prueba en tiempo seco</translation>
    </message>
    <message>
        <source>a figure is not in the table</source>
        <translation>una cifra no está en la tabla</translation>
    </message>
    <message>
        <source>the temperature of the water is out of range</source>
        <translation>la temperatura del agua está fuera de rango</translation>
    </message>
    <message>
        <source>the height above sea level is out of range</source>
        <translation>la altura sobre el nivel del mar está fuera de rango</translation>
    </message>
    <message>
        <source>the water flows too slowly or too fast to be reckoned</source>
        <translation>el agua corre demasiado lento o demasiado rápido para calcularla</translation>
    </message>
    <message>
        <source>the roughness of the pipe is out of range</source>
        <translation>la rugosidad del tubo está fuera de rango</translation>
    </message>
    <message>
        <source>the inside diameter of the pipe is out of range</source>
        <translation>el diámetro interior del tubo está fuera de rango</translation>
    </message>
    <message>
        <source>a length is out of range</source>
        <translation>un largo está fuera de rango</translation>
    </message>
    <message>
        <source>the flow is out of range</source>
        <translation>el caudal está fuera de rango</translation>
    </message>
    <message>
        <source>the head is out of range</source>
        <translation>la carga está fuera de rango</translation>
    </message>
    <message>
        <source>a coefficient is out of range</source>
        <translation>un coeficiente está fuera de rango</translation>
    </message>
    <message>
        <source>the loss of a fitting is out of range</source>
        <translation>la pérdida de un accesorio está fuera de rango</translation>
    </message>
    <message>
        <source>a slope is out of range</source>
        <translation>una pendiente está fuera de rango</translation>
    </message>
    <message>
        <source>a width is out of range</source>
        <translation>un ancho está fuera de rango</translation>
    </message>
    <message>
        <source>a depth is out of range</source>
        <translation>una profundidad está fuera de rango</translation>
    </message>
    <message>
        <source>an area is out of range</source>
        <translation>un área está fuera de rango</translation>
    </message>
    <message>
        <source>the size of the grain is out of range</source>
        <translation>el tamaño del grano está fuera de rango</translation>
    </message>
    <message>
        <source>the weight of the grain is out of range</source>
        <translation>el peso del grano está fuera de rango</translation>
    </message>
    <message>
        <source>the silt in the water is out of range</source>
        <translation>el sedimento del agua está fuera de rango</translation>
    </message>
    <message>
        <source>the time is out of range</source>
        <translation>el tiempo está fuera de rango</translation>
    </message>
    <message>
        <source>a level is out of range</source>
        <translation>un nivel está fuera de rango</translation>
    </message>
    <message>
        <source>the pressure is out of range</source>
        <translation>la presión está fuera de rango</translation>
    </message>
    <message>
        <source>a reading is out of range</source>
        <translation>una lectura está fuera de rango</translation>
    </message>
    <message>
        <source>the reserve is out of range</source>
        <translation>la reserva está fuera de rango</translation>
    </message>
    <message>
        <source>the rain of the storm is out of range</source>
        <translation>la lluvia del aguacero está fuera de rango</translation>
    </message>
    <message>
        <source>it works</source>
        <translation>funciona</translation>
    </message>
    <message>
        <source>it works, but weakly</source>
        <translation>funciona, pero con poca fuerza</translation>
    </message>
    <message>
        <source>it works only while the tank is rather full</source>
        <translation>funciona solo mientras el tanque está más bien lleno</translation>
    </message>
    <message>
        <source>it does not work</source>
        <translation>no funciona</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>Nothing flows: %1.</source>
        <translation>No corre agua: %1.</translation>
    </message>
    <message>
        <source>The line brings %1 when the tank is nearly empty; when it is full, %2.</source>
        <translation>La tubería trae %1 con el tanque casi vacío; con el tanque lleno, %2.</translation>
    </message>
    <message>
        <source>The line brings %1 with the tank full; when it is nearly empty, %2.</source>
        <translation>La tubería trae %1 con el tanque lleno; con el tanque casi vacío, %2.</translation>
    </message>
    <message>
        <source>The line brings %1.</source>
        <translation>La tubería trae %1.</translation>
    </message>
    <message>
        <source>The line brings %1 with the tank full and %2 when it is nearly empty.</source>
        <translation>La tubería trae %1 con el tanque lleno y %2 con el tanque casi vacío.</translation>
    </message>
    <message>
        <source>Wide open it will not bring that much: the pipe sucks so hard at its high parts that the column of water parts.</source>
        <translation>Con todo abierto no traerá tanto: el tubo chupa tan fuerte en sus partes altas que la columna de agua se corta.</translation>
    </message>
    <message>
        <source>Wanted are %1.</source>
        <translation>Se desean %1.</translation>
    </message>
    <message>
        <source>Wanted are %1, but %2.</source>
        <translation>Se desean %1, pero %2.</translation>
    </message>
    <message>
        <source>The smallest pipe that brings the %1 wanted has %2 outside diameter, class %3.</source>
        <translation>El tubo más pequeño que trae los %1 deseados tiene %2 de diámetro exterior, clase %3.</translation>
    </message>
    <message>
        <source>With its end shut, the lowest point of the pipe has to bear %1.</source>
        <translation>Con el extremo cerrado, el punto más bajo del tubo debe aguantar %1.</translation>
    </message>
    <message>
        <source>With its end shut, the lowest point of the pipe has to bear %1; it is good for %2.</source>
        <translation>Con el extremo cerrado, el punto más bajo del tubo debe aguantar %1; está hecho para %2.</translation>
    </message>
    <message>
        <source>High points on the way, where air gathers: %1, the first at %2.</source>
        <translation>Puntos altos en el camino, donde se junta aire: %1, el primero a %2.</translation>
    </message>
    <message>
        <source>The siphon cannot be started with the tank nearly empty: its top lies %1 over the water, and %2 is the most.</source>
        <translation>El sifón no se puede cebar con el tanque casi vacío: su punto más alto queda %1 sobre el agua, y el máximo es %2.</translation>
    </message>
    <message>
        <source>Wide open the siphon breaks; let no more than %1 through its valve.</source>
        <translation>Con todo abierto el sifón se corta; no deje pasar más de %1 por su válvula.</translation>
    </message>
    <message>
        <source>The siphon stops before the tank is nearly empty: its end does not lie below the water.</source>
        <translation>El sifón se para antes de que el tanque esté casi vacío: su extremo no queda por debajo del agua.</translation>
    </message>
    <message>
        <source>The siphon stops before the tank is nearly empty: its inlet falls dry.</source>
        <translation>El sifón se para antes de que el tanque esté casi vacío: su entrada queda en seco.</translation>
    </message>
    <message>
        <source>Wide open the siphon breaks.</source>
        <translation>Con todo abierto el sifón se corta.</translation>
    </message>
    <message>
        <source>The siphon cannot be reckoned: %1.</source>
        <translation>El sifón no se puede calcular: %1.</translation>
    </message>
    <message>
        <source>To start the siphon, fill it with %1 of water.</source>
        <translation>Para cebar el sifón, llénelo con %1 de agua.</translation>
    </message>
    <message>
        <source>What head is left at the outlet cannot be told: %1.</source>
        <translation>No se puede decir qué carga queda en la salida: %1.</translation>
    </message>
    <message>
        <source>Outlet, %1: a head of %2 is left with the tank full and %3 when it is nearly empty, %4 is wanted; %5.</source>
        <translation>Salida, %1: queda una carga de %2 con el tanque lleno y de %3 con el tanque casi vacío; se desean %4; %5.</translation>
    </message>
    <message>
        <source>How long it takes to draw the tank down to %1 over the floor cannot be told: %2.</source>
        <translation>No se puede decir cuánto tarda en bajar el agua del tanque hasta %1 sobre el piso: %2.</translation>
    </message>
    <message>
        <source>Wide open, it draws the full tank down to %1 over the floor in %2.</source>
        <translation>Con todo abierto, baja el tanque lleno hasta %1 sobre el piso en %2.</translation>
    </message>
    <message>
        <source>No way is entered for the line from the source. Give two points at least: the pipe&apos;s inlet and its end over the tank.</source>
        <translation>No hay recorrido anotado para la tubería de la fuente. Dé al menos dos puntos: la entrada del tubo y su extremo sobre el tanque.</translation>
    </message>
    <message>
        <source>No way is entered for the line to the field. Give two points at least: where the pipe leaves the tank and where it ends.</source>
        <translation>No hay recorrido anotado para la tubería al campo. Dé al menos dos puntos: donde el tubo sale del tanque y donde termina.</translation>
    </message>
    <message>
        <source>Ground cut down</source>
        <translation>Terreno cortado</translation>
    </message>
    <message>
        <source>Ground filled up</source>
        <translation>Terreno rellenado</translation>
    </message>
    <message>
        <source>Spoil heap</source>
        <translation>Montón de tierra sacada</translation>
    </message>
    <message>
        <source>Arrow down the fall</source>
        <translation>Flecha ladera abajo</translation>
    </message>
    <message>
        <source>Marked place</source>
        <translation>Lugar marcado</translation>
    </message>
    <message>
        <source>Pattern of the cut</source>
        <translation>Trama del corte</translation>
    </message>
    <message>
        <source>Pattern of the fill</source>
        <translation>Trama del relleno</translation>
    </message>
    <message>
        <source>platform corner</source>
        <translation>esquina de la plataforma</translation>
    </message>
    <message>
        <source>top of the cut, where it meets the ground</source>
        <translation>parte alta del corte, donde encuentra el terreno</translation>
    </message>
    <message>
        <source>toe of the fill, where it meets the ground</source>
        <translation>pie del relleno, donde encuentra el terreno</translation>
    </message>
    <message>
        <source>pipes, overflow and silt trap</source>
        <translation>tubos, rebosadero y desarenador</translation>
    </message>
    <message>
        <source>Taken is a storm of %1, for the heaviest rain here is not known: %2 run in.</source>
        <translation>Se toma un aguacero de %1, porque no se conoce la lluvia más fuerte de aquí: entran %2.</translation>
    </message>
    <message>
        <source>In a storm of %1, %2 run into the tank.</source>
        <translation>En un aguacero de %1 entran %2 al tanque.</translation>
    </message>
    <message>
        <source>Of these, %1 are rain and %2 come from the source.</source>
        <translation>De ellos, %1 son lluvia y %2 vienen de la fuente de agua.</translation>
    </message>
    <message>
        <source>How high the water then stands cannot be told: %1.</source>
        <translation>No se puede decir hasta dónde sube entonces el agua: %1.</translation>
    </message>
    <message>
        <source>The overflow passes %1 at most, so water runs over the rim.</source>
        <translation>El rebosadero deja pasar %1 como máximo, así que el agua pasa por encima del borde.</translation>
    </message>
    <message>
        <source>A notch %1 wide would be enough.</source>
        <translation>Bastaría una muesca de %1 de ancho.</translation>
    </message>
    <message>
        <source>An overflow pipe of %1 inside diameter would be enough.</source>
        <translation>Bastaría un tubo de rebosadero de %1 de diámetro interior.</translation>
    </message>
    <message>
        <source>Where the water goes if the overflow is blocked cannot be told: %1.</source>
        <translation>No se puede decir adónde va el agua si el rebosadero se tapa: %1.</translation>
    </message>
    <message>
        <source>If the overflow is blocked, water runs over the rim anywhere, %1 deep.</source>
        <translation>Si el rebosadero se tapa, el agua pasa por encima del borde por cualquier parte, con %1 de profundidad.</translation>
    </message>
    <message>
        <source>If the overflow is blocked, all of the water leaves over the low part of the rim, %1 deep.</source>
        <translation>Si el rebosadero se tapa, toda el agua sale por la parte baja del borde, con %1 de profundidad.</translation>
    </message>
    <message>
        <source>If the overflow is blocked, water leaves over the low part of the rim, %1 deep, and over the rest of it too: make the low part longer or lower.</source>
        <translation>Si el rebosadero se tapa, el agua sale por la parte baja del borde, con %1 de profundidad, y también por el resto: haga la parte baja más larga o más baja.</translation>
    </message>
    <message>
        <source>How the spill path carries the water cannot be told: %1.</source>
        <translation>No se puede decir cómo lleva el agua el canal de desagüe: %1.</translation>
    </message>
    <message>
        <source>In the spill path, %1 deep, the water runs %2 deep at %3.</source>
        <translation>En el canal de desagüe, de %1 de profundidad, el agua corre con %2 de profundidad a %3.</translation>
    </message>
    <message>
        <source>Its bed bears that speed (%1).</source>
        <translation>Su fondo aguanta esa velocidad (%1).</translation>
    </message>
    <message>
        <source>Its bed may not bear that speed (%1).</source>
        <translation>Puede que su fondo no aguante esa velocidad (%1).</translation>
    </message>
    <message>
        <source>Its bed is washed out at that speed (%1).</source>
        <translation>A esa velocidad el agua se lleva su fondo (%1).</translation>
    </message>
    <message>
        <source>A trap for grains of %1 and a flow of %2 cannot be reckoned: %3.</source>
        <translation>No se puede calcular un desarenador para granos de %1 y un caudal de %2: %3.</translation>
    </message>
    <message>
        <source>To hold back grains of %1 at a flow of %2, the trap is made %3 long, %4 wide and %5 deep inside.</source>
        <translation>Para retener granos de %1 con un caudal de %2, el desarenador se hace de %3 de largo, %4 de ancho y %5 de profundidad por dentro.</translation>
    </message>
    <message>
        <source>Between two cleanings about %1 of mud settle in it, %2 deep.</source>
        <translation>Entre dos limpiezas se asientan en él cerca de %1 de lodo, con %2 de profundidad.</translation>
    </message>
    <message>
        <source>What the trap as it is holds back cannot be told: %1.</source>
        <translation>No se puede decir qué retiene el desarenador tal como está: %1.</translation>
    </message>
    <message>
        <source>The trap as it is has room for grains of %1 to sink, but water runs so fast through it that it carries them on: make it deeper or wider.</source>
        <translation>El desarenador tal como está da lugar a que se hundan granos de %1, pero el agua lo cruza tan rápido que se los lleva: hágalo más hondo o más ancho.</translation>
    </message>
    <message>
        <source>The trap as it is holds back grains of %1 and larger.</source>
        <translation>El desarenador tal como está retiene granos de %1 y mayores.</translation>
    </message>
    <message>
        <source>The tank loses %1 through its lining, about %2.</source>
        <translation>El tanque pierde %1 por su revestimiento, cerca de %2.</translation>
    </message>
    <message>
        <source>Against the bucket the tank gained water: some ran in, or a reading is wrong. Test again.</source>
        <translation>En comparación con el balde, el tanque ganó agua: entró alguna, o una lectura está mal. Repita la prueba.</translation>
    </message>
    <message>
        <source>The difference is no more than the readings&apos; error of %1, so it tells nothing. Let the test run longer.</source>
        <translation>La diferencia no es mayor que el error de las lecturas, de %1, así que no dice nada. Deje que la prueba dure más.</translation>
    </message>
    <message>
        <source>For a tank of plaster that is tight.</source>
        <translation>Para un tanque de repello, eso cuenta como estanco.</translation>
    </message>
    <message>
        <source>Watch it: test again in some weeks.</source>
        <translation>Vigílelo: repita la prueba en unas semanas.</translation>
    </message>
    <message>
        <source>Find the cracks and mend them.</source>
        <translation>Busque las grietas y repárelas.</translation>
    </message>
    <message>
        <source>Let no more water in, empty it and mend it.</source>
        <translation>No deje entrar más agua, vacíelo y repárelo.</translation>
    </message>
    <message>
        <source>It keeps to a mark for concrete tanks, %1: %2.</source>
        <translation>Cumple un límite para tanques de concreto, %1: %2.</translation>
    </message>
    <message>
        <source>It does not keep to a mark for concrete tanks, %1: %2.</source>
        <translation>No cumple un límite para tanques de concreto, %1: %2.</translation>
    </message>
    <message>
        <source>What the tank loses more than the bucket goes through the lining.</source>
        <translation>Lo que el tanque pierde de más que el balde sale por el revestimiento.</translation>
    </message>
    <message>
        <source>The leak test tells nothing: %1.</source>
        <translation>La prueba de fuga no dice nada: %1.</translation>
    </message>
    <message>
        <source>Place of the tank</source>
        <translation>Lugar del tanque</translation>
    </message>
    <message>
        <source>Platform</source>
        <translation>Plataforma</translation>
    </message>
    <message>
        <source>Delivery</source>
        <translation>Conducción del agua</translation>
    </message>
    <message>
        <source>Line from the source</source>
        <translation>Tubería de la fuente</translation>
    </message>
    <message>
        <source>Points of the source line</source>
        <translation>Puntos de la tubería de la fuente</translation>
    </message>
    <message>
        <source>Pipe from the source</source>
        <translation>Tubo desde la fuente de agua</translation>
    </message>
    <message>
        <source>Line to the field</source>
        <translation>Tubería al campo</translation>
    </message>
    <message>
        <source>Points of the field line</source>
        <translation>Puntos de la tubería al campo</translation>
    </message>
    <message>
        <source>Pipe to the field</source>
        <translation>Tubo al campo</translation>
    </message>
    <message>
        <source>Overflow</source>
        <translation>Rebosadero</translation>
    </message>
    <message>
        <source>Spill path</source>
        <translation>Canal de desagüe</translation>
    </message>
    <message>
        <source>Silt trap</source>
        <translation>Desarenador</translation>
    </message>
    <message>
        <source>Leak test</source>
        <translation>Prueba de fuga</translation>
    </message>
    <message>
        <source>Spot height, row %1</source>
        <translation>Cota, fila %1</translation>
    </message>
    <message>
        <source>Source line, point %1</source>
        <translation>Tubería de la fuente, punto %1</translation>
    </message>
    <message>
        <source>Field line, point %1</source>
        <translation>Tubería al campo, punto %1</translation>
    </message>
    <message>
        <source>is not further along the line than the point before it; list the points in the order in which the water meets them</source>
        <translation>no queda más lejos en la tubería que el punto anterior; anote los puntos en el orden en que los encuentra el agua</translation>
    </message>
    <message>
        <source>is not in the table of pipes of this grade; choose one that is, or enter the bore as measured</source>
        <translation>no está en la tabla de tubos de este grado; elija uno que esté, o anote el diámetro interior medido</translation>
    </message>
    <message>
        <source>could not be joined to a surface, for the work was broken off; try again and let it finish</source>
        <translation>no se pudo unir en una superficie porque se interrumpió el trabajo; intente otra vez y déjelo terminar</translation>
    </message>
    <message>
        <source>pit depth from which a ladder stands in it</source>
        <translation>profundidad de la excavación desde la que debe haber una escalera</translation>
    </message>
    <message>
        <source>pit depth from which walls are held against cave-in</source>
        <translation>profundidad de la excavación desde la que se protegen las paredes contra derrumbes</translation>
    </message>
    <message>
        <source>deepest pit dug by hand</source>
        <translation>excavación más honda que se cava a mano</translation>
    </message>
    <message>
        <source>pit depth to which the table of batters goes</source>
        <translation>profundidad de la excavación hasta la que llega la tabla de taludes</translation>
    </message>
    <message>
        <source>depth of an open cut in the firmest soil that stands a day</source>
        <translation>profundidad de un corte abierto en el suelo más firme que se tiene en pie un día</translation>
    </message>
    <message>
        <source>furthest way to the ladder</source>
        <translation>camino más largo a la escalera</translation>
    </message>
    <message>
        <source>toe of the heap back from the pit edge</source>
        <translation>pie del montón, apartado de la orilla de la excavación</translation>
    </message>
    <message>
        <source>height of the heap at most</source>
        <translation>altura máxima del montón</translation>
    </message>
    <message>
        <source>steepest side of loose ground</source>
        <translation>lado más empinado de la tierra suelta</translation>
    </message>
    <message>
        <source>slope from which old slips are looked for</source>
        <translation>pendiente desde la que se buscan deslizamientos viejos</translation>
    </message>
    <message>
        <source>slope from which an engineer decides</source>
        <translation>pendiente desde la que decide un ingeniero</translation>
    </message>
    <message>
        <source>factor of safety wanted of a slope</source>
        <translation>factor de seguridad deseado de una ladera</translation>
    </message>
    <message>
        <source>factor of safety wanted of a cut</source>
        <translation>factor de seguridad deseado de un corte</translation>
    </message>
    <message>
        <source>walkway round the rim</source>
        <translation>pasillo alrededor del borde</translation>
    </message>
    <message>
        <source>batter of the cut face</source>
        <translation>talud de la cara del corte</translation>
    </message>
    <message>
        <source>batter of the fill face</source>
        <translation>talud de la cara del relleno</translation>
    </message>
    <message>
        <source>topsoil stripped</source>
        <translation>tierra vegetal retirada</translation>
    </message>
    <message>
        <source>compacted fill per ground dug</source>
        <translation>relleno apisonado por tierra cavada</translation>
    </message>
    <message>
        <source>natural ground wanted over floor and walls</source>
        <translation>terreno natural deseado sobre piso y paredes</translation>
    </message>
    <message>
        <source>distance to the edge, share of its drop, as for footings</source>
        <translation>distancia al filo, parte de su altura, como para cimientos</translation>
    </message>
    <message>
        <source>distance to the edge at most, as for footings</source>
        <translation>distancia máxima al filo, como para cimientos</translation>
    </message>
    <message>
        <source>house downhill within</source>
        <translation>casa ladera abajo, a menos de</translation>
    </message>
    <message>
        <source>weight over uplift wanted</source>
        <translation>peso entre empuje del agua, deseado</translation>
    </message>
    <message>
        <source>ground water that feeds frost, within</source>
        <translation>agua subterránea que alimenta la helada, a menos de</translation>
    </message>
    <message>
        <source>shrinkage of moderate swelling</source>
        <translation>encogimiento para hinchamiento moderado</translation>
    </message>
    <message>
        <source>shrinkage of high swelling</source>
        <translation>encogimiento para hinchamiento alto</translation>
    </message>
    <message>
        <source>shrinkage of very high swelling</source>
        <translation>encogimiento para hinchamiento muy alto</translation>
    </message>
    <message>
        <source>clay from which soil may swell</source>
        <translation>arcilla desde la que el suelo puede hincharse</translation>
    </message>
    <message>
        <source>low</source>
        <translation>baja</translation>
    </message>
    <message>
        <source>typical</source>
        <translation>típica</translation>
    </message>
    <message>
        <source>high</source>
        <translation>alta</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>bar</translation>
    </message>
    <message>
        <source>mm per hour</source>
        <translation>mm por hora</translation>
    </message>
    <message>
        <source>kPa</source>
        <translation>kPa</translation>
    </message>
    <message>
        <source>kN/m³</source>
        <translation>kN/m³</translation>
    </message>
    <message>
        <source>level set by hand</source>
        <translation>nivel puesto a mano</translation>
    </message>
    <message>
        <source>A freeboard of %1 would leave it.</source>
        <translation>Un borde libre de %1 lo dejaría.</translation>
    </message>
    <message>
        <source>As low as it is now, it has to be %1 long.</source>
        <translation>Tan bajo como está ahora, debe tener %1 de largo.</translation>
    </message>
    <message>
        <source>A trap %1 long and %2 wide inside, with %3 of water and mud, would hold them.</source>
        <translation>Un desarenador de %1 de largo y %2 de ancho por dentro, con %3 de agua y lodo, los retendría.</translation>
    </message>
    <message>
        <source>The overflow</source>
        <translation>El rebosadero</translation>
    </message>
    <message>
        <source>The blocked overflow</source>
        <translation>El rebosadero tapado</translation>
    </message>
    <message>
        <source>The silt trap</source>
        <translation>El desarenador</translation>
    </message>
    <message>
        <source>The leak test</source>
        <translation>La prueba de fuga</translation>
    </message>
    <message>
        <source>%1 could not be reckoned, so nothing is known of it: %2.</source>
        <translation>%1: no se pudo calcular, así que nada se sabe de esto: %2.</translation>
    </message>
    <message>
        <source>How far the water sank in a light bucket that floats deep in the tank, only a hand&apos;s breadth of it dry: this much evaporated.</source>
        <translation>Cuánto bajó el agua en una cubeta liviana que flota honda en el tanque, con solo el ancho de una mano en seco: esto se evaporó.</translation>
    </message>
    <message>
        <source>To make it, %1 are cut; next to nothing is filled in.</source>
        <translation>Para hacerla se cortan %1; casi nada se rellena.</translation>
    </message>
    <message>
        <source>Anticlockwise seen from above; at 0 the length runs east. A tank whose length lies across the fall, on one level, needs the least digging.</source>
        <translation>En sentido contrario al reloj, visto desde arriba; con 0 el largo va hacia el este. Un tanque con el largo atravesado a la pendiente, a un mismo nivel, necesita la menor excavación.</translation>
    </message>
    <message>
        <source>How far the filled face runs out for each unit of height; 1.5 is usual for ground that is well rammed.</source>
        <translation>Cuánto se tiende la cara del relleno por cada unidad de altura; 1.5 es lo usual en tierra bien apisonada.</translation>
    </message>
    <message>
        <source>Cut or fill runs out of the survey before it meets the ground. Survey further out or move the tank; steeper cut faces help too, if the soil bears them.</source>
        <translation>El corte o el relleno sale del terreno medido antes de encontrar el terreno. Mida más afuera o mueva el tanque; también ayudan caras de corte más paradas, si el suelo las aguanta.</translation>
    </message>
    <message>
        <source>The ground below the tank may slip even with the tank empty, while it is dug.</source>
        <translation>El terreno abajo del tanque puede deslizarse aun con el tanque vacío, mientras se excava.</translation>
    </message>
    <message>
        <source>The ground below the tank may slip when the tank leaks.</source>
        <translation>El terreno abajo del tanque puede deslizarse cuando el tanque pierde agua.</translation>
    </message>
    <message>
        <source>A licensed engineer must look at it before anyone digs (calculation sheet E1). A place further from the edge, or on flatter ground, would help.</source>
        <translation>Un ingeniero con licencia debe verlo antes de que alguien excave (hoja de cálculo E1). Ayudaría un lugar más lejos del filo o en terreno más plano.</translation>
    </message>
    <message>
        <source>The heap of spoil is to lie downhill of the tank, where its weight loads the ground that carries it. Heap it across the fall, to the %1 of the tank.</source>
        <translation>El montón de tierra sacada quedaría ladera abajo del tanque, donde su peso carga el terreno que lo sostiene. Amontónela atravesado a la pendiente, hacia el %1 del tanque.</translation>
    </message>
    <message>
        <source>The heap of spoil is to lie uphill of the tank, where rain washes it in. Heap it across the fall, to the %1 of the tank.</source>
        <translation>El montón de tierra sacada quedaría ladera arriba del tanque, donde la lluvia lo mete adentro. Amontónela atravesado a la pendiente, hacia el %1 del tanque.</translation>
    </message>
    <message>
        <source>The cut face of the platform stands up to %1 high and leans back %2 for each unit of height; the published table asks for %3 in this soil. Lean it back, or widen the walkway where it stands close over the pit.</source>
        <translation>La cara del corte de la plataforma llega a %1 de alto y se tiende %2 por cada unidad de altura; la tabla publicada pide %3 en este suelo. Tiéndala más, o ensanche el pasillo donde queda cerca sobre la excavación.</translation>
    </message>
    <message>
        <source>The fill face of the platform runs out %1 for each unit of height; loose ground comes to rest at %2. Make it %2 or flatter.</source>
        <translation>La cara del relleno de la plataforma se tiende %1 por cada unidad de altura; la tierra suelta se queda quieta con %2. Hágala de %2 o más tendida.</translation>
    </message>
    <message>
        <source>the siphon does not run with its end wide open</source>
        <translation>el sifón no corre con su extremo abierto del todo</translation>
    </message>
    <message>
        <source>It fills the empty tank in %1 when nothing is drawn.</source>
        <translation>Llena el tanque vacío en %1 si no se saca nada.</translation>
    </message>
    <message>
        <source>The siphon cannot be started, not even with the tank full: its top lies %1 over the water, and %2 is the most.</source>
        <translation>El sifón no se puede cebar, ni con el tanque lleno: su parte alta queda %1 sobre el agua, y %2 es lo más.</translation>
    </message>
    <message>
        <source>has another height than an earlier point at the same place</source>
        <translation>tiene otra altura que un punto anterior en el mismo lugar</translation>
    </message>
    <message>
        <source>%1 %2, %4: found %3.</source>
        <translation>%1 %2, %4: se halló %3.</translation>
    </message>
    <message>
        <source>The table of spot heights</source>
        <translation>La tabla de cotas</translation>
    </message>
    <message>
        <source>spoil heap off the line of the fall, least</source>
        <translation>montón de tierra fuera de la línea de la pendiente, lo menos</translation>
    </message>
    <message>
        <source>In a storm the overflow has to pass %1; the water then stands only %2 below the lowest part of the rim, and %3 is wanted.</source>
        <translation>En un aguacero el rebosadero debe dejar pasar %1; el agua queda entonces solo %2 abajo de la parte más baja del borde, y se quieren %3.</translation>
    </message>
    <message>
        <source>In a storm the overflow has to pass %1 and cannot: the water runs over the rim and washes out the ground behind the lining. It should stay %2 below the lowest part of it.</source>
        <translation>En un aguacero el rebosadero debe dejar pasar %1 y no puede: el agua pasa sobre el borde y lava el terreno detrás del revestimiento. Debería quedar %2 abajo de su parte más baja.</translation>
    </message>
    <message>
        <source>The overflow passes it: the water stays %1 below the lowest part of the rim, wanted are %2.</source>
        <translation>El rebosadero la deja pasar: el agua queda %1 abajo de la parte más baja del borde; se quieren %2.</translation>
    </message>
    <message>
        <source>The overflow just passes it: the water stays only %1 below the lowest part of the rim, wanted are %2.</source>
        <translation>El rebosadero apenas la deja pasar: el agua queda solo %1 abajo de la parte más baja del borde; se quieren %2.</translation>
    </message>
    <message>
        <source>No leak test is entered. Let a light bucket float deep in the tank, only a hand&apos;s breadth of it dry; read both, and read them again after a dry day.</source>
        <translation>No hay prueba de fuga anotada. Ponga a flotar honda en el tanque una cubeta liviana, con solo el ancho de una mano en seco; lea las dos, y léalas otra vez después de un día seco.</translation>
    </message>
    <message>
        <source>The fill takes all that is dug, and %1 more that would have to be brought.</source>
        <translation>El relleno ocupa todo lo excavado, y %1 más que habría que traer.</translation>
    </message>
    <message>
        <source>The fill takes more than all that is dug: %1 of ground would have to be brought. Lay the platform lower.</source>
        <translation>El relleno pide más que todo lo excavado: habría que traer %1 de tierra. Ponga la plataforma más abajo.</translation>
    </message>
    <message>
        <source>By the levels of its ends alone the line would bring %1.</source>
        <translation>Solo por los niveles de sus extremos, la tubería traería %1.</translation>
    </message>
    <message>
        <source>The tank costs about %1.</source>
        <translation>El tanque cuesta cerca de %1.</translation>
    </message>
    <message>
        <source>The tank costs about %1: %2 in money, %3 given by the household in goods and work.</source>
        <translation>El tanque cuesta cerca de %1: %2 en dinero, %3 que pone la familia en materiales y trabajo.</translation>
    </message>
    <message>
        <source>%1 for materials</source>
        <translation>%1 en materiales</translation>
    </message>
    <message>
        <source>%1 for work</source>
        <translation>%1 en trabajo</translation>
    </message>
    <message>
        <source>%1 for carrying</source>
        <translation>%1 en acarreo</translation>
    </message>
    <message>
        <source>%1 for other things</source>
        <translation>%1 en otras cosas</translation>
    </message>
    <message>
        <source>%1 kept for what nobody foresees</source>
        <translation>%1 guardados para imprevistos</translation>
    </message>
    <message>
        <source>Of that, %1.</source>
        <translation>De eso, %1.</translation>
    </message>
    <message>
        <source>For each m³ (%1) that the full tank stores, building costs %2.</source>
        <translation>Por cada m³ (%1) que guarda el tanque lleno, construirlo cuesta %2.</translation>
    </message>
    <message>
        <source>all months</source>
        <translation>todos los meses</translation>
    </message>
    <message>
        <source>What the water of the dry months costs cannot be told before the water balance is there.</source>
        <translation>No se puede decir cuánto cuesta el agua de los meses secos mientras no haya balance de agua.</translation>
    </message>
    <message>
        <source>No month counts as dry, so the cost of water in the dry months cannot be told.</source>
        <translation>Ningún mes cuenta como seco, así que no se puede decir cuánto cuesta el agua en los meses secos.</translation>
    </message>
    <message>
        <source>In the dry months (%1) of a mean year %2 are drawn from the tank; what they cost cannot be told.</source>
        <translation>En los meses secos (%1) de un año promedio se sacan del tanque %2; no se puede decir cuánto cuestan.</translation>
    </message>
    <message>
        <source>For each m³ (%1) that it delivers in the dry months (%2), the tank costs %3 over its life, interest and upkeep counted; in a mean year it delivers %4 then.</source>
        <translation>Por cada m³ (%1) que entrega en los meses secos (%2), el tanque cuesta %3 a lo largo de su vida, contando interés y mantenimiento; en un año promedio entrega %4 en esos meses.</translation>
    </message>
    <message>
        <source>%1: %2 (%3 for a single one)</source>
        <translation>%1: %2 (%3 para uno solo)</translation>
    </message>
    <message>
        <source>Loads to carry: %1.</source>
        <translation>Cargas por acarrear: %1.</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>%1 (into %2)</source>
        <translation>%1 (en %2)</translation>
    </message>
    <message>
        <source>Too heavy for one load and split even: %1.</source>
        <translation>Muy pesado para una sola carga y repartido en partes iguales: %1.</translation>
    </message>
    <message>
        <source>Money is needed first on %1; most on one day is %2, on %3.</source>
        <translation>El dinero hace falta desde el %1; lo más en un solo día es %2, el %3.</translation>
    </message>
    <message>
        <source>No price is entered yet, so nothing is known of the money. Ask the shop and the people who work, and enter what one unit costs.</source>
        <translation>Todavía no hay ningún precio anotado, así que nada se sabe del dinero. Pregunte en la tienda y a la gente que trabaja, y anote lo que cuesta una unidad.</translation>
    </message>
    <message>
        <source>digging</source>
        <translation>cavar</translation>
    </message>
    <message>
        <source>ramming fill</source>
        <translation>apisonar relleno</translation>
    </message>
    <message>
        <source>laying the stone bed</source>
        <translation>poner el lecho de piedra</translation>
    </message>
    <message>
        <source>spreading plaster</source>
        <translation>extender repello</translation>
    </message>
    <message>
        <source>mixing mortar</source>
        <translation>preparar mezcla</translation>
    </message>
    <message>
        <source>not carried</source>
        <translation>sin acarreo</translation>
    </message>
    <message>
        <source>porter</source>
        <translation>porteador</translation>
    </message>
    <message>
        <source>mule</source>
        <translation>mula</translation>
    </message>
    <message>
        <source>trolley</source>
        <translation>remolque</translation>
    </message>
    <message>
        <source>soil-cement plaster</source>
        <translation>repello de suelo-cemento</translation>
    </message>
    <message>
        <source>plastic sheet</source>
        <translation>lámina de plástico</translation>
    </message>
    <message>
        <source>ferrocement</source>
        <translation>ferrocemento</translation>
    </message>
    <message>
        <source>stone masonry</source>
        <translation>mampostería de piedra</translation>
    </message>
    <message>
        <source>moulded plastic tank</source>
        <translation>tanque de plástico moldeado</translation>
    </message>
    <message>
        <source>the whole job</source>
        <translation>todo el trabajo</translation>
    </message>
    <message>
        <source>one m² of face</source>
        <translation>un m² de cara</translation>
    </message>
    <message>
        <source>one m³ held</source>
        <translation>un m³ de cabida</translation>
    </message>
    <message>
        <source>thickness of the coats</source>
        <translation>espesor de las capas</translation>
    </message>
    <message>
        <source>unevenness of dug faces</source>
        <translation>irregularidad de las caras cavadas</translation>
    </message>
    <message>
        <source>loose ingredients per placed plaster</source>
        <translation>materiales sueltos por repello colocado</translation>
    </message>
    <message>
        <source>loose weight of cement</source>
        <translation>peso suelto del cemento</translation>
    </message>
    <message>
        <source>time for digging</source>
        <translation>tiempo para cavar</translation>
    </message>
    <message>
        <source>time for plastering</source>
        <translation>tiempo para repellar</translation>
    </message>
    <message>
        <source>prices of goods</source>
        <translation>precios de los materiales</translation>
    </message>
    <message>
        <source>wages</source>
        <translation>pago de jornales</translation>
    </message>
    <message>
        <source>flow of the source</source>
        <translation>caudal de la fuente de agua</translation>
    </message>
    <message>
        <source>Filling starts on %1, later than %2, by which it should: plaster that falls dry cracks.</source>
        <translation>El llenado empieza el %1, después del %2, la última fecha en que debería: el repello que se queda seco se raja.</translation>
    </message>
    <message>
        <source>Filling starts on %1; it should start by %2 at the latest.</source>
        <translation>El llenado empieza el %1; debería empezar a más tardar el %2.</translation>
    </message>
    <message>
        <source>with %1 a day let in, as entered</source>
        <translation>dejando entrar %1 al día, como está anotado</translation>
    </message>
    <message>
        <source>with %1 a day from the source at first</source>
        <translation>con %1 al día de la fuente de agua al principio</translation>
    </message>
    <message>
        <source>What flows in is not known, so nobody can say when the tank is full. Enter the water let in each day, or the flow of the source.</source>
        <translation>No se sabe cuánta agua entra, así que nadie puede decir cuándo estará lleno el tanque. Anote el agua que se deja entrar cada día, o el caudal de la fuente de agua.</translation>
    </message>
    <message>
        <source>The tank is full on %1, %2.</source>
        <translation>El tanque está lleno el %1, %2.</translation>
    </message>
    <message>
        <source>The tank does not fill within a year, %1: the water comes to %2 over the floor.</source>
        <translation>El tanque no se llena en un año, %1: el agua llega a %2 sobre el piso.</translation>
    </message>
    <message>
        <source>On some days less is let in than could be, so that the water does not rise too fast for the young plaster.</source>
        <translation>Algunos días se deja entrar menos de lo que se podría, para que el agua no suba demasiado rápido para el repello nuevo.</translation>
    </message>
    <message>
        <source>Wall from %1 to %2 over the floor: wet sacks until %3.</source>
        <translation>Pared de %1 a %2 sobre el piso: costales mojados hasta el %3.</translation>
    </message>
    <message>
        <source>Wall from %1 to %2 over the floor, which the water does not cover: wet sacks until %3.</source>
        <translation>Pared de %1 a %2 sobre el piso, que el agua no cubre: costales mojados hasta el %3.</translation>
    </message>
    <message>
        <source>Sacks on bare wall take about %1 of water after the last coat has cured.</source>
        <translation>Los costales en la pared descubierta llevan cerca de %1 de agua después del curado de la última capa.</translation>
    </message>
    <message>
        <source>For the water to cover all walls by the time their curing ends, about %1 would have to be brought by hand.</source>
        <translation>Para que el agua cubra todas las paredes cuando termine su curado, habría que traer a mano cerca de %1.</translation>
    </message>
    <message>
        <source>There is no coat yet after which the tank could be filled.</source>
        <translation>Todavía no hay una capa después de la cual se pueda llenar el tanque.</translation>
    </message>
    <message>
        <source>Over the years %1 costs least: %2 a year, interest and upkeep counted.</source>
        <translation>Con los años, lo que menos cuesta es %1: %2 al año, contando interés y mantenimiento.</translation>
    </message>
    <message>
        <source>That is %1 a year for each m³ (%2) stored.</source>
        <translation>Eso es %1 al año por cada m³ (%2) guardado.</translation>
    </message>
    <message>
        <source>%1: %2 a year; %3 to build with its digging, lasts about %4, upkeep %5 a year.</source>
        <translation>%1: %2 al año; %3 por construirlo con lo que se cava, dura cerca de %4, mantenimiento %5 al año.</translation>
    </message>
    <message>
        <source>Life and upkeep are proposals to begin with: ask people who have such a lining, and change them.</source>
        <translation>La duración y el mantenimiento son propuestas para empezar: pregunte a quienes tienen un revestimiento así, y cámbielas.</translation>
    </message>
    <message>
        <source>The bill comes out too low, for a price is missing: %1.</source>
        <translation>El presupuesto sale demasiado bajo, porque falta un precio: %1.</translation>
    </message>
    <message>
        <source>The bill comes out too low, for prices are missing: %1. The first of them: %2.</source>
        <translation>El presupuesto sale demasiado bajo, porque faltan precios: %1. El primero de ellos: %2.</translation>
    </message>
    <message>
        <source>A bag of cement weighs %1, more than the %2 of one load (%3). Split each bag into dry, closed sacks of the same weight.</source>
        <translation>Una bolsa de cemento pesa %1, más que los %2 de una carga (%3). Reparta cada bolsa en costales secos y cerrados del mismo peso.</translation>
    </message>
    <message>
        <source>Option %1 cannot be built as entered, so nothing is reckoned for it. The table of options says why.</source>
        <translation>La opción %1 no se puede construir como está anotada, así que no se calcula nada para ella. La tabla de opciones dice por qué.</translation>
    </message>
    <message>
        <source>What is bought or paid: an item of the plan, or one of your own such as a gate or a meal.</source>
        <translation>Lo que se compra o se paga: un concepto del plan, o uno propio, como un portón o una comida.</translation>
    </message>
    <message>
        <source>What one unit costs where it is bought, without carrying; leave empty if not known.</source>
        <translation>Lo que cuesta una unidad donde se compra, sin acarreo; deje vacío si no se sabe.</translation>
    </message>
    <message>
        <source>How many units; leave empty to take it from the plan. An item of your own needs it.</source>
        <translation>Cuántas unidades; deje vacío para tomarlo del plan. Un concepto propio necesita este dato.</translation>
    </message>
    <message>
        <source>Share that the household or the group gives itself, in goods or in work; no money is paid for it.</source>
        <translation>Parte que pone la familia o el grupo por su cuenta, en materiales o en trabajo; por ella no se paga dinero.</translation>
    </message>
    <message>
        <source>Who carries it from the road to the tank.</source>
        <translation>Quién lo lleva del camino al tanque.</translation>
    </message>
    <message>
        <source>Weigh one unit; leave empty to take it from the table of weights.</source>
        <translation>Pese una unidad; deje vacío para tomarlo de la tabla de pesos.</translation>
    </message>
    <message>
        <source>What one person carries on this path and comes back for again, all day; ask the porters.</source>
        <translation>Lo que una persona carga por este sendero y vuelve a cargar, todo el día; pregunte a los porteadores.</translation>
    </message>
    <message>
        <source>How often a porter walks from road to tank and back in a day.</source>
        <translation>Cuántas veces en un día va un porteador a pie del camino al tanque y vuelve.</translation>
    </message>
    <message>
        <source>What a porter is paid for one load from road to tank; leave empty if not known.</source>
        <translation>Lo que se paga a un porteador por una carga del camino al tanque; deje vacío si no se sabe.</translation>
    </message>
    <message>
        <source>What one mule carries on this path; about a fifth of its own weight.</source>
        <translation>Lo que carga una mula por este sendero; cerca de la quinta parte de su propio peso.</translation>
    </message>
    <message>
        <source>How often a mule goes from road to tank and back in a day.</source>
        <translation>Cuántas veces en un día va una mula del camino al tanque y vuelve.</translation>
    </message>
    <message>
        <source>What is paid for one mule load from road to tank, its driver counted; leave empty if not known.</source>
        <translation>Lo que se paga por una carga de mula del camino al tanque, contando al arriero; deje vacío si no se sabe.</translation>
    </message>
    <message>
        <source>What one trolley or small tractor takes over this road.</source>
        <translation>Lo que lleva un remolque o un tractor pequeño por este camino.</translation>
    </message>
    <message>
        <source>How often a trolley drives to the tank and back in a day.</source>
        <translation>Cuántas veces en un día va un remolque hasta el tanque y vuelve.</translation>
    </message>
    <message>
        <source>What is paid for one trolley load, its driver counted; leave empty if not known.</source>
        <translation>Lo que se paga por una carga de remolque, contando al conductor; deje vacío si no se sabe.</translation>
    </message>
    <message>
        <source>Share of the bill that is kept in reserve for breakage, rain and forgotten things.</source>
        <translation>Parte del presupuesto que se guarda de reserva para roturas, lluvia y cosas olvidadas.</translation>
    </message>
    <message>
        <source>What money costs or would earn in a year beyond the rise of prices; it makes linings that last long and short comparable.</source>
        <translation>Lo que el dinero cuesta o ganaría en un año por encima de la subida de los precios; con esto se pueden comparar revestimientos que duran mucho y que duran poco.</translation>
    </message>
    <message>
        <source>One way to line the tank, to set beside the others.</source>
        <translation>Una manera de revestir el tanque, para poner junto a las otras.</translation>
    </message>
    <message>
        <source>What the lining costs, put in place; leave empty if not known. For soil-cement plaster the bill of this plan is taken then.</source>
        <translation>Lo que cuesta el revestimiento ya puesto; deje vacío si no se sabe. Para el repello de suelo-cemento se toma entonces el presupuesto de este plan.</translation>
    </message>
    <message>
        <source>Whether the price is for the whole job, for a face of one m², or for one m³ that the tank holds.</source>
        <translation>Si el precio es por todo el trabajo, por un m² de cara o por un m³ de cabida del tanque.</translation>
    </message>
    <message>
        <source>Years until the lining has to be made anew; ask people who have one.</source>
        <translation>Años hasta que hay que hacer de nuevo el revestimiento; pregunte a quienes tienen uno.</translation>
    </message>
    <message>
        <source>What mending and cleaning cost in a year, as a share of the price.</source>
        <translation>Lo que cuestan en un año los arreglos y la limpieza, como parte del precio.</translation>
    </message>
    <message>
        <source>A figure of the plan that nobody knows exactly beforehand.</source>
        <translation>Una cifra del plan que nadie conoce con exactitud de antemano.</translation>
    </message>
    <message>
        <source>How far it may fall below the figure entered, at worst; 0 if it cannot.</source>
        <translation>Cuánto puede bajar de la cifra anotada, en el peor caso; 0 si no puede.</translation>
    </message>
    <message>
        <source>How far it may rise over the figure entered, at worst; 0 if it cannot.</source>
        <translation>Cuánto puede subir de la cifra anotada, en el peor caso; 0 si no puede.</translation>
    </message>
    <message>
        <source>How many times the plan is reckoned with figures drawn by lot; more draws take longer and shake less.</source>
        <translation>Cuántas veces se calcula el plan con cifras sacadas por sorteo; más sorteos tardan más y hacen variar menos el resultado.</translation>
    </message>
    <message>
        <source>Start of the lot; the same seed gives the same draws again.</source>
        <translation>Comienzo del sorteo; el mismo número da otra vez los mismos sorteos.</translation>
    </message>
    <message>
        <source>Shortest length that is tried; of a round tank the smallest diameter. It is measured as the clear length of the tank is.</source>
        <translation>El menor largo que se prueba; en un tanque redondo, el menor diámetro. Se mide igual que el largo interior del tanque.</translation>
    </message>
    <message>
        <source>Longest length that is tried; of a round tank the largest diameter. Measure what fits on the platform.</source>
        <translation>El mayor largo que se prueba; en un tanque redondo, el mayor diámetro. Mida lo que cabe en la plataforma.</translation>
    </message>
    <message>
        <source>Smallest clear width that is tried.</source>
        <translation>El menor ancho interior que se prueba.</translation>
    </message>
    <message>
        <source>Largest clear width that is tried; measure what fits on the platform.</source>
        <translation>El mayor ancho interior que se prueba; mida lo que cabe en la plataforma.</translation>
    </message>
    <message>
        <source>Smallest clear depth that is tried.</source>
        <translation>La menor profundidad interior que se prueba.</translation>
    </message>
    <message>
        <source>Largest clear depth that is tried; pits deeper than hand digging allows are left out all the same.</source>
        <translation>La mayor profundidad interior que se prueba; de todos modos quedan fuera las excavaciones más hondas de lo que se admite cavar a mano.</translation>
    </message>
    <message>
        <source>Sizes are tried this far apart; half the step means up to eight times as many sizes.</source>
        <translation>Los tamaños se prueban con esta separación; con la mitad del paso hay hasta ocho veces la cantidad de tamaños.</translation>
    </message>
    <message>
        <source>What the bill may come to; leave empty if money sets no limit.</source>
        <translation>Hasta dónde puede llegar el presupuesto; deje vacío si el dinero no pone límite.</translation>
    </message>
    <message>
        <source>Bags of cement that can be had; leave empty if cement sets no limit.</source>
        <translation>Bolsas de cemento que se pueden conseguir; deje vacío si el cemento no pone límite.</translation>
    </message>
    <message>
        <source>People who can come for one coat on one day; leave empty if they set no limit.</source>
        <translation>Personas que pueden venir para una capa en un día; deje vacío si no ponen límite.</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Concepto</translation>
    </message>
    <message>
        <source>Price of one</source>
        <translation>Precio por unidad</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>Given by the household</source>
        <translation>Aporte de la familia</translation>
    </message>
    <message>
        <source>Carried by</source>
        <translation>Quién lo lleva</translation>
    </message>
    <message>
        <source>Weight of one</source>
        <translation>Peso por unidad</translation>
    </message>
    <message>
        <source>Porter: load at most</source>
        <translation>Porteador: carga máxima</translation>
    </message>
    <message>
        <source>Porter: trips a day</source>
        <translation>Porteador: viajes al día</translation>
    </message>
    <message>
        <source>Porter: price of a trip</source>
        <translation>Porteador: precio de un viaje</translation>
    </message>
    <message>
        <source>Mule: load at most</source>
        <translation>Mula: carga máxima</translation>
    </message>
    <message>
        <source>Mule: trips a day</source>
        <translation>Mula: viajes al día</translation>
    </message>
    <message>
        <source>Mule: price of a trip</source>
        <translation>Mula: precio de un viaje</translation>
    </message>
    <message>
        <source>Trolley: load at most</source>
        <translation>Remolque: carga máxima</translation>
    </message>
    <message>
        <source>Trolley: trips a day</source>
        <translation>Remolque: viajes al día</translation>
    </message>
    <message>
        <source>Trolley: price of a trip</source>
        <translation>Remolque: precio de un viaje</translation>
    </message>
    <message>
        <source>Kept for what nobody foresees</source>
        <translation>Reserva para imprevistos</translation>
    </message>
    <message>
        <source>Interest a year</source>
        <translation>Interés al año</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Precio</translation>
    </message>
    <message>
        <source>Price is for</source>
        <translation>El precio es por</translation>
    </message>
    <message>
        <source>Lasts</source>
        <translation>Dura</translation>
    </message>
    <message>
        <source>Upkeep a year</source>
        <translation>Mantenimiento al año</translation>
    </message>
    <message>
        <source>What is uncertain</source>
        <translation>Lo que no es seguro</translation>
    </message>
    <message>
        <source>Lowest</source>
        <translation>Mínima</translation>
    </message>
    <message>
        <source>Highest</source>
        <translation>Máxima</translation>
    </message>
    <message>
        <source>Number of draws</source>
        <translation>Cantidad de sorteos</translation>
    </message>
    <message>
        <source>Seed of the draws</source>
        <translation>Número que inicia los sorteos</translation>
    </message>
    <message>
        <source>Length from</source>
        <translation>Largo desde</translation>
    </message>
    <message>
        <source>Length to</source>
        <translation>Largo hasta</translation>
    </message>
    <message>
        <source>Width from</source>
        <translation>Ancho desde</translation>
    </message>
    <message>
        <source>Width to</source>
        <translation>Ancho hasta</translation>
    </message>
    <message>
        <source>Depth from</source>
        <translation>Profundidad desde</translation>
    </message>
    <message>
        <source>Depth to</source>
        <translation>Profundidad hasta</translation>
    </message>
    <message>
        <source>In steps of</source>
        <translation>En pasos de</translation>
    </message>
    <message>
        <source>Money at most</source>
        <translation>Dinero, como máximo</translation>
    </message>
    <message>
        <source>Bags of cement at most</source>
        <translation>Bolsas de cemento, como máximo</translation>
    </message>
    <message>
        <source>People on a coat at most</source>
        <translation>Personas en una capa, como máximo</translation>
    </message>
    <message>
        <source>Stone</source>
        <translation>Piedra</translation>
    </message>
    <message>
        <source>Sacks</source>
        <translation>Costales</translation>
    </message>
    <message>
        <source>Labourers</source>
        <translation>Peones</translation>
    </message>
    <message>
        <source>Masons</source>
        <translation>Albañiles</translation>
    </message>
    <message>
        <source>Fence</source>
        <translation>Cerca</translation>
    </message>
    <message>
        <source>Porters</source>
        <translation>Porteadores</translation>
    </message>
    <message>
        <source>Mules</source>
        <translation>Mulas</translation>
    </message>
    <message>
        <source>Trolley</source>
        <translation>Remolque</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>bolsa</translation>
    </message>
    <message>
        <source>piece</source>
        <translation>pieza</translation>
    </message>
    <message>
        <source>person-day</source>
        <translation>jornal</translation>
    </message>
    <message>
        <source>job</source>
        <translation>trabajo</translation>
    </message>
    <message>
        <source>Person-days of work</source>
        <translation>Jornales de trabajo</translation>
    </message>
    <message>
        <source>Money</source>
        <translation>Dinero</translation>
    </message>
    <message>
        <source>Days to fill the tank</source>
        <translation>Días para llenar el tanque</translation>
    </message>
    <message>
        <source>weight of loose soil</source>
        <translation>peso de la tierra suelta</translation>
    </message>
    <message>
        <source>weight of loose sand</source>
        <translation>peso de la arena suelta</translation>
    </message>
    <message>
        <source>weight of loose stone</source>
        <translation>peso de la piedra suelta</translation>
    </message>
    <message>
        <source>weight of water</source>
        <translation>peso del agua</translation>
    </message>
    <message>
        <source>weight of an empty sack</source>
        <translation>peso de un costal vacío</translation>
    </message>
    <message>
        <source>weight of pipe</source>
        <translation>peso del tubo</translation>
    </message>
    <message>
        <source>weight of fence</source>
        <translation>peso de la cerca</translation>
    </message>
    <message>
        <source>Clear the ground</source>
        <translation>Limpiar el terreno</translation>
    </message>
    <message>
        <source>Set out with pegs and string</source>
        <translation>Replantear con estacas y cordel</translation>
    </message>
    <message>
        <source>Strip the topsoil</source>
        <translation>Retirar la tierra vegetal</translation>
    </message>
    <message>
        <source>Cut the platform</source>
        <translation>Cortar la plataforma</translation>
    </message>
    <message>
        <source>Fill and ram the platform</source>
        <translation>Rellenar y apisonar la plataforma</translation>
    </message>
    <message>
        <source>Dig the low part of the pit</source>
        <translation>Cavar la parte honda de la excavación</translation>
    </message>
    <message>
        <source>Carry the spoil to its heap</source>
        <translation>Llevar la tierra sacada a su montón</translation>
    </message>
    <message>
        <source>Trim walls and floor</source>
        <translation>Emparejar paredes y fondo</translation>
    </message>
    <message>
        <source>Lay pipes and their collars</source>
        <translation>Poner tubos y sus collares</translation>
    </message>
    <message>
        <source>Fill for the first time</source>
        <translation>Llenar por primera vez</translation>
    </message>
    <message>
        <source>Watch the first filling</source>
        <translation>Vigilar el primer llenado</translation>
    </message>
    <message>
        <source>Test for leaks</source>
        <translation>Hacer la prueba de fuga</translation>
    </message>
    <message>
        <source>Build the silt trap</source>
        <translation>Hacer el desarenador</translation>
    </message>
    <message>
        <source>Build overflow and spill path</source>
        <translation>Hacer el rebosadero y el canal de desagüe</translation>
    </message>
    <message>
        <source>Build fence, gate and ladder</source>
        <translation>Hacer cerca, puerta y escalera</translation>
    </message>
    <message>
        <source>Plant the beds</source>
        <translation>Sembrar las camas</translation>
    </message>
    <message>
        <source>masons</source>
        <translation>albañiles</translation>
    </message>
    <message>
        <source>people who wet</source>
        <translation>personas que mojan</translation>
    </message>
    <message>
        <source>records of work and batches</source>
        <translation>registros de trabajo y de tandas</translation>
    </message>
    <message>
        <source>ranges of uncertain figures</source>
        <translation>rangos de cifras inciertas</translation>
    </message>
    <message>
        <source>limits of the search</source>
        <translation>límites de la búsqueda</translation>
    </message>
    <message>
        <source>%1 can be put on in one go: within %2 it takes %3 (%4), and %5 are there (%6).</source>
        <translation>%1 se puede colocar de una sola vez: en %2 como máximo necesita %3 (%4), y hay %5 (%6).</translation>
    </message>
    <message>
        <source>%1 cannot be put on in one go: within %2 it takes %3 (%4), and %5 are there (%6).</source>
        <translation>%1 no se puede colocar de una sola vez: en %2 como máximo necesita %3 (%4), y hay %5 (%6).</translation>
    </message>
    <message>
        <source>No smaller tank of this depth is found that these people could plaster in one go: ask for more people.</source>
        <translation>No se halla un tanque más pequeño, de esta profundidad, que estas personas puedan repellar de una sola vez: pida más gente.</translation>
    </message>
    <message>
        <source>%1: batches with a whole bag each: %2, which is %3 an hour; the mixing places bring %4 an hour.</source>
        <translation>%1: tandas de una bolsa entera: %2, o sea %3 por hora; los lugares de mezcla dan %4 por hora.</translation>
    </message>
    <message>
        <source>That is too slow; mixing places needed: %1.</source>
        <translation>Eso es demasiado lento; lugares de mezcla necesarios: %1.</translation>
    </message>
    <message>
        <source>%1: a batch is on the wall in %2; it may take %3 before it stiffens.</source>
        <translation>%1: una tanda queda puesta en la pared en %2; puede tardar %3 antes de endurecer.</translation>
    </message>
    <message>
        <source>%1: a batch takes %2 to spread and stiffens after %3. Mix half a bag at a time, which is on the wall in %4.</source>
        <translation>%1: extender una tanda lleva %2, y endurece después de %3. Prepare media bolsa cada vez: así queda puesta en la pared en %4.</translation>
    </message>
    <message>
        <source>%1: a batch takes %2 to spread and stiffens after %3; even half a bag takes %4. More people have to spread.</source>
        <translation>%1: extender una tanda lleva %2, y endurece después de %3; aun con media bolsa lleva %4. Tienen que extender más personas.</translation>
    </message>
    <message>
        <source>%1: have ready %2 of cement, %3 of water for mixing and %4 sacks to cover it.</source>
        <translation>%1: tenga a mano %2 de cemento, %3 de agua para la mezcla y %4 costales para cubrirla.</translation>
    </message>
    <message>
        <source>one of them a mason</source>
        <translation>una de ellas albañil</translation>
    </message>
    <message>
        <source>none of them a mason</source>
        <translation>ninguna de ellas albañil</translation>
    </message>
    <message numerus="yes">
        <source>%1 of them masons</source>
        <translation>
            <numerusform>%1 de ellas albañil</numerusform>
            <numerusform>%1 de ellas albañiles</numerusform>
        </translation>
    </message>
    <message>
        <source>These people could plaster a tank of the same depth that is %1 across and holds about %2.</source>
        <translation>Estas personas podrían repellar un tanque de la misma profundidad, de %1 de un lado al otro, con cabida de unos %2.</translation>
    </message>
    <message>
        <source>These people could plaster a tank of the same depth that is %1 long and %2 wide and holds about %3.</source>
        <translation>Estas personas podrían repellar un tanque de la misma profundidad, de %1 de largo y %2 de ancho, con cabida de unos %3.</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>sin anotar</translation>
    </message>
    <message>
        <source>%1 × %2 × %3</source>
        <translation>%1 × %2 × %3</translation>
    </message>
    <message>
        <source>Cannot be built</source>
        <translation>No se puede construir</translation>
    </message>
    <message>
        <source>Clear floor and depth</source>
        <translation>Piso interior y profundidad</translation>
    </message>
    <message>
        <source>Holds when full</source>
        <translation>Cabida cuando está lleno</translation>
    </message>
    <message>
        <source>Can be drawn</source>
        <translation>Se puede sacar</translation>
    </message>
    <message>
        <source>Years in ten with water all year</source>
        <translation>Años de cada diez con agua todo el año</translation>
    </message>
    <message>
        <source>Days without water in a mean year</source>
        <translation>Días en que falta agua en un año promedio</translation>
    </message>
    <message>
        <source>Drawn in the dry months of a mean year</source>
        <translation>Agua sacada en los meses secos de un año promedio</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Costo</translation>
    </message>
    <message>
        <source>Of it in money</source>
        <translation>De eso, en dinero</translation>
    </message>
    <message>
        <source>Cost for each m³ stored</source>
        <translation>Costo por cada m³ de cabida</translation>
    </message>
    <message>
        <source>Ground to dig for the pit</source>
        <translation>Tierra por cavar para la excavación</translation>
    </message>
    <message>
        <source>People on a coat, at most</source>
        <translation>Personas en una capa, como máximo</translation>
    </message>
    <message>
        <source>Works begin</source>
        <translation>Empieza la obra</translation>
    </message>
    <message>
        <source>Works end</source>
        <translation>Termina la obra</translation>
    </message>
    <message>
        <source>Findings that say stop</source>
        <translation>Observaciones que dicen alto</translation>
    </message>
    <message>
        <source>Findings that ask for caution</source>
        <translation>Observaciones que piden cuidado</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>Closed days</source>
        <translation>Días sin trabajo</translation>
    </message>
    <message>
        <source>Wishes for tasks</source>
        <translation>Deseos para tareas</translation>
    </message>
    <message>
        <source>Own rates</source>
        <translation>Rendimientos propios</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>Registros</translation>
    </message>
    <message>
        <source>Trial batches</source>
        <translation>Tandas de prueba</translation>
    </message>
    <message>
        <source>Work measured</source>
        <translation>Trabajo medido</translation>
    </message>
    <message>
        <source>Prices</source>
        <translation>Precios</translation>
    </message>
    <message>
        <source>Price list</source>
        <translation>Lista de precios</translation>
    </message>
    <message>
        <source>Porter</source>
        <translation>Porteador</translation>
    </message>
    <message>
        <source>Mule</source>
        <translation>Mula</translation>
    </message>
    <message>
        <source>Linings compared</source>
        <translation>Revestimientos comparados</translation>
    </message>
    <message>
        <source>Ranges</source>
        <translation>Rangos</translation>
    </message>
    <message>
        <source>Uncertain figures</source>
        <translation>Cifras inciertas</translation>
    </message>
    <message>
        <source>Limits of the search</source>
        <translation>Límites de la búsqueda</translation>
    </message>
    <message>
        <source>Options</source>
        <translation>Opciones</translation>
    </message>
    <message>
        <source>Closed days %1</source>
        <translation>Días sin trabajo %1</translation>
    </message>
    <message>
        <source>Wish %1</source>
        <translation>Deseo %1</translation>
    </message>
    <message>
        <source>Own rate %1</source>
        <translation>Rendimiento propio %1</translation>
    </message>
    <message>
        <source>Trial batch %1</source>
        <translation>Tanda de prueba %1</translation>
    </message>
    <message>
        <source>Work measured %1</source>
        <translation>Trabajo medido %1</translation>
    </message>
    <message>
        <source>Price list, line %1</source>
        <translation>Lista de precios, fila %1</translation>
    </message>
    <message>
        <source>Lining %1</source>
        <translation>Revestimiento %1</translation>
    </message>
    <message>
        <source>Uncertain figure %1</source>
        <translation>Cifra incierta %1</translation>
    </message>
    <message>
        <source>Option %1</source>
        <translation>Opción %1</translation>
    </message>
    <message>
        <source>Changes</source>
        <translation>Cambios</translation>
    </message>
    <message>
        <source>stands there already; give each line its own</source>
        <translation>ya está ahí; dé a cada línea uno propio</translation>
    </message>
    <message>
        <source>leaves no day to work on; give fewer closed days, or another rest day</source>
        <translation>no deja ningún día para trabajar; ponga menos días sin trabajo, u otro día de descanso</translation>
    </message>
    <message>
        <source>does not lie in order: low must not be over typical, nor typical over high</source>
        <translation>no está en orden: la baja no debe pasar de la típica, ni la típica de la alta</translation>
    </message>
    <message>
        <source>is no entry that an option can change; take the change out of the option</source>
        <translation>no es un dato que una opción pueda cambiar; quite ese cambio de la opción</translation>
    </message>
    <message>
        <source>is not in the table of rates; choose one that is</source>
        <translation>no está en la tabla de rendimientos; elija uno que esté</translation>
    </message>
    <message>
        <source>%1: %2, hardly more or less.</source>
        <translation>%1: %2, casi sin variación.</translation>
    </message>
    <message>
        <source>%1: %2 in the middle; in one of ten cases more than %3, in one of ten less than %4.</source>
        <translation>%1: %2 en el medio; en uno de cada diez casos, más de %3; en uno de cada diez, menos de %4.</translation>
    </message>
    <message>
        <source>With the figures as entered it is %1.</source>
        <translation>Con las cifras anotadas da %1.</translation>
    </message>
    <message>
        <source>What moves it most: %1.</source>
        <translation>Lo que más hace variar el resultado: %1.</translation>
    </message>
    <message>
        <source>Nothing has been drawn yet, so no range can be told.</source>
        <translation>Todavía no se ha hecho ningún sorteo, así que no se puede decir ningún rango.</translation>
    </message>
    <message>
        <source>From %1 draws between the lowest and highest values entered. A range is no promise: it is as good as these values.</source>
        <translation>Según %1 sorteos entre los valores más bajos y más altos anotados. Un rango no es una promesa: vale lo que valen esos valores.</translation>
    </message>
    <message numerus="yes">
        <source>%1 records</source>
        <translation>
            <numerusform>%1 registro</numerusform>
            <numerusform>%1 registros</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: one record, %2; entered is %3.</source>
        <translation>%1: un registro, %2; lo anotado es %3.</translation>
    </message>
    <message>
        <source>%1: %2, the middle one %3, from %4 to %5; entered is %6.</source>
        <translation>%1: %2, el del medio %3, de %4 a %5; lo anotado es %6.</translation>
    </message>
    <message>
        <source>The plan is reckoned with the middle values of the records, not with the figures entered.</source>
        <translation>El plan se calcula con los valores del medio de los registros, no con las cifras anotadas.</translation>
    </message>
    <message>
        <source>The plan is reckoned with the figures entered; the records stand beside them.</source>
        <translation>El plan se calcula con las cifras anotadas; los registros están al lado.</translation>
    </message>
    <message>
        <source>No records yet. Mix one batch and measure the face that it covers, or write down how many people took how many days for a piece of work: the order of cement and the dates then follow your own sand, soil and people.</source>
        <translation>Todavía no hay registros. Prepare una tanda y mida la cara que cubre, o anote cuántas personas tardaron cuántos días en una parte del trabajo: así el pedido de cemento y las fechas siguen a la arena, la tierra y la gente de usted.</translation>
    </message>
    <message>
        <source>%1 across, %2 deep</source>
        <translation>%1 de diámetro, %2 de profundidad</translation>
    </message>
    <message>
        <source>%1 of %2 years</source>
        <translation>%1 de cada %2 años</translation>
    </message>
    <message>
        <source>The cheapest size with water all year in %1: %2.</source>
        <translation>El tamaño más barato con agua todo el año en %1: %2.</translation>
    </message>
    <message>
        <source>The size with least cement and with water all year in %1: %2.</source>
        <translation>El tamaño con menos cemento y con agua todo el año en %1: %2.</translation>
    </message>
    <message>
        <source>No size within the limits gives water all year in %1. Widen the limits, find more water, or water smaller beds.</source>
        <translation>Ningún tamaño dentro de los límites da agua todo el año en %1. Amplíe los límites, busque más agua, o riegue camas más pequeñas.</translation>
    </message>
    <message>
        <source>Whether the water lasts is not known, so sizes are told apart by what they hold.</source>
        <translation>No se sabe si el agua alcanza, así que los tamaños se distinguen por su cabida.</translation>
    </message>
    <message>
        <source>The size that holds most within the limits: %1.</source>
        <translation>El tamaño de mayor cabida dentro de los límites: %1.</translation>
    </message>
    <message>
        <source>Sizes worth a look, each better than all cheaper ones: %1. Of the others there is always one that gives as much for less money.</source>
        <translation>Tamaños que vale la pena mirar, cada uno mejor que todos los más baratos: %1. Para cada uno de los demás hay siempre otro que da lo mismo por menos dinero.</translation>
    </message>
    <message>
        <source>Sizes worth a look, each better than all that take less cement: %1. Of the others there is always one that gives as much for less cement.</source>
        <translation>Tamaños que vale la pena mirar, cada uno mejor que todos los que llevan menos cemento: %1. Para cada uno de los demás hay siempre otro que da lo mismo con menos cemento.</translation>
    </message>
    <message>
        <source>the lining does not fit into them (%1)</source>
        <translation>el revestimiento no cabe en ellos (%1)</translation>
    </message>
    <message>
        <source>the pit is too deep to dig by hand (%1)</source>
        <translation>la excavación es demasiado honda para cavarla a mano (%1)</translation>
    </message>
    <message>
        <source>the cut is higher than this soil bears (%1)</source>
        <translation>el corte es más alto de lo que aguanta este suelo (%1)</translation>
    </message>
    <message>
        <source>no platform can be made for them (%1)</source>
        <translation>no se puede hacer una plataforma para ellos (%1)</translation>
    </message>
    <message>
        <source>a coat takes more people than can come (%1)</source>
        <translation>una capa necesita más personas de las que pueden venir (%1)</translation>
    </message>
    <message>
        <source>they take more cement than can be had (%1)</source>
        <translation>llevan más cemento del que se puede conseguir (%1)</translation>
    </message>
    <message>
        <source>they cost more than is there (%1)</source>
        <translation>cuestan más de lo que hay (%1)</translation>
    </message>
    <message>
        <source>Sizes tried: %1; within all limits: %2.</source>
        <translation>Tamaños probados: %1; dentro de todos los límites: %2.</translation>
    </message>
    <message>
        <source>Sizes are left out because %1.</source>
        <translation>Hay tamaños que quedan fuera porque %1.</translation>
    </message>
    <message>
        <source>No size was tried: the limits leave none, or the search was broken off.</source>
        <translation>No se probó ningún tamaño: los límites no dejan ninguno, o se interrumpió la búsqueda.</translation>
    </message>
    <message>
        <source>No size keeps to all limits; widen them.</source>
        <translation>Ningún tamaño cumple todos los límites; amplíelos.</translation>
    </message>
    <message>
        <source>kg/ft² per hour</source>
        <translation>kg/pie² por hora</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>kg/m² per hour</source>
        <translation>kg/m² por hora</translation>
    </message>
    <message>
        <source>With the first coat in the week from %1, as planned, the coats stay undisturbed %2, by %3 of weather.</source>
        <translation>Con la primera capa en la semana del %1, como está previsto, y según %3 de clima, las capas quedan sin contratiempos: %2.</translation>
    </message>
    <message>
        <source>%1 or more of rain on the day of a coat or the day after (%2)</source>
        <translation>%1 o más de lluvia el día de una capa o el día siguiente (%2)</translation>
    </message>
    <message>
        <source>a night of frost in the week after a coat (%1)</source>
        <translation>una noche de helada en la semana después de una capa (%1)</translation>
    </message>
    <message>
        <source>a day too hot or too cold for plaster (%1)</source>
        <translation>un día demasiado caluroso o demasiado frío para el repello (%1)</translation>
    </message>
    <message>
        <source>What disturbs them: %1.</source>
        <translation>Los contratiempos: %1.</translation>
    </message>
    <message>
        <source>No other week of the year is better.</source>
        <translation>Ninguna otra semana del año es mejor.</translation>
    </message>
    <message>
        <source>The best week for the first coat begins on %1: undisturbed %2. For that the works start on %3.</source>
        <translation>La mejor semana para la primera capa empieza el %1; capas sin contratiempos: %2. Para eso la obra empieza el %3.</translation>
    </message>
    <message>
        <source>%1: in the mean weather of its day fresh plaster loses %2 of water.</source>
        <translation>%1: con el clima promedio de su día, el repello fresco pierde agua a razón de %2.</translation>
    </message>
    <message>
        <source>This is a chance, not a forecast: look at the sky and hear the forecast before you call people together.</source>
        <translation>Esto es una probabilidad, no un pronóstico: mire el cielo y oiga el pronóstico antes de reunir a la gente.</translation>
    </message>
    <message>
        <source>The weather of the place is not known, so nobody can say how often rain or frost disturbs the coats. Enter the climate with the water, by monthly means or a daily record.</source>
        <translation>No se conoce el clima del lugar, así que nadie puede decir cada cuánto la lluvia o la helada traen contratiempos a las capas. Anote el clima junto con el agua, con promedios mensuales o con un registro diario.</translation>
    </message>
    <message>
        <source>There is nothing to do yet.</source>
        <translation>Todavía no hay nada que hacer.</translation>
    </message>
    <message>
        <source>The works begin on %1 and end on %2: %3 in all, days of rest and of wetting counted.</source>
        <translation>La obra empieza el %1 y termina el %2: en total %3, contando los días de descanso y de mojado.</translation>
    </message>
    <message>
        <source>The beds are planted from %1 on.</source>
        <translation>Las camas se siembran desde el %1.</translation>
    </message>
    <message>
        <source>coat %1 on %2</source>
        <translation>la capa %1 el %2</translation>
    </message>
    <message>
        <source>Call people together for %1.</source>
        <translation>Reúna a la gente para %1.</translation>
    </message>
    <message>
        <source>Water must be let in by %1.</source>
        <translation>El agua debe empezar a entrar a más tardar el %1.</translation>
    </message>
    <message>
        <source>A day lost on one of these moves the end, for they leave no room: %1.</source>
        <translation>Un día perdido en una de estas tareas atrasa el final, porque no tienen holgura: %1.</translation>
    </message>
    <message>
        <source>Most people are needed on %1: %2, %3.</source>
        <translation>El día en que más personas hacen falta es el %1: %2, %3.</translation>
    </message>
    <message>
        <source>All tasks together take %1; %2 of it is masons&apos; work.</source>
        <translation>Todas las tareas juntas llevan %1; de eso, trabajo de albañil: %2.</translation>
    </message>
    <message>
        <source>For digging two rules of thumb are at hand: a published norm makes it %1, reports from practice, without a source, %2. Ask people who have dug in this soil.</source>
        <translation>Para cavar hay a mano dos reglas prácticas: según una norma publicada, %1; según lo que se cuenta de la práctica, sin fuente, %2. Pregunte a quienes han cavado en este suelo.</translation>
    </message>
    <message>
        <source>Sacks have to be wetted on days of rest too: %1. Agree beforehand who comes.</source>
        <translation>También en los días de descanso hay que mojar los costales: %1. Acuerde de antemano quién viene.</translation>
    </message>
    <message>
        <source>Wetting takes most water on %1: %2.</source>
        <translation>El día en que el mojado lleva más agua es el %1: %2.</translation>
    </message>
    <message>
        <source>%1 needs more hands that lay plaster with skill. Masons entered: %2; needed to put it on in one go: %3.</source>
        <translation>%1 necesita más manos que sepan poner repello. Albañiles anotados: %2; necesarios para colocarla de una sola vez: %3.</translation>
    </message>
    <message>
        <source>%1 takes %2 batches an hour to be on in time; the mixing places that there are bring %3. Mixing places needed: %4.</source>
        <translation>%1 necesita %2 tandas por hora para estar puesta a tiempo; los lugares de mezcla que hay dan %3. Lugares de mezcla necesarios: %4.</translation>
    </message>
    <message>
        <source>%1: the people there take %2 to spread a batch with a whole bag of cement; after %3 it stiffens.</source>
        <translation>%1: las personas que hay tardan %2 en extender una tanda de una bolsa entera de cemento; después de %3 endurece.</translation>
    </message>
    <message>
        <source>Mix half a bag at a time: that is on the wall in %1.</source>
        <translation>Prepare media bolsa cada vez: así queda puesta en la pared en %1.</translation>
    </message>
    <message>
        <source>Half a bag at a time takes %1 and stiffens too: put more people on the coat, or mix still less at a time.</source>
        <translation>También media bolsa cada vez lleva %1 y endurece: ponga más personas en la capa, o prepare todavía menos cada vez.</translation>
    </message>
    <message>
        <source>On %1 more people are needed than there are: %2 needed, %3 there. Tasks lie on top of each other; move one of them, or ask for more people.</source>
        <translation>El %1 hacen falta más personas de las que hay: se necesitan %2, hay %3. Hay tareas que caen en los mismos días; mueva una de ellas, o pida más gente.</translation>
    </message>
    <message>
        <source>A wish is entered for a task that this plan does not have: %1. It is kept and not used.</source>
        <translation>Hay un deseo anotado para una tarea que este plan no tiene: %1. Se conserva y no se usa.</translation>
    </message>
    <message>
        <source>What flows into the new tank is not known, so nobody can say when the water covers the walls. Enter the water let in each day, or the flow of the source.</source>
        <translation>No se sabe cuánta agua entra al tanque nuevo, así que nadie puede decir cuándo cubre las paredes. Anote el agua que se deja entrar cada día, o el caudal de la fuente de agua.</translation>
    </message>
    <message>
        <source>Filling is planned to start on %1, but should start by %2: plaster that falls dry cracks. Start earlier, or keep all walls under wet sacks until then.</source>
        <translation>El llenado está previsto para el %1, pero debería empezar a más tardar el %2: el repello que se queda seco se raja. Empiece antes, o mantenga todas las paredes bajo costales mojados hasta entonces.</translation>
    </message>
    <message>
        <source>The first filling does not reach the overflow level of %1 within a year: the water stands at %2 then. Find more water, or make the tank smaller.</source>
        <translation>En un año el primer llenado no llega al nivel del rebosadero, que es %1: para entonces el agua está a %2. Busque más agua, o haga el tanque más pequeño.</translation>
    </message>
    <message>
        <source>The water rises slowly: after the last coat has cured, bare wall must stay under wet sacks for %1 more, until %2. That takes up to %3.</source>
        <translation>El agua sube despacio: después del curado de la última capa, la pared descubierta debe seguir bajo costales mojados %1 más, hasta el %2. Agua que eso lleva, como máximo: %3.</translation>
    </message>
    <message>
        <source>Or bring about %1 of water by hand, so that it covers the walls in time.</source>
        <translation>O traiga a mano cerca de %1 de agua, para que cubra a tiempo las paredes.</translation>
    </message>
    <message>
        <source>heavy rain (%1)</source>
        <translation>lluvia fuerte (%1)</translation>
    </message>
    <message>
        <source>frost (%1)</source>
        <translation>helada (%1)</translation>
    </message>
    <message>
        <source>a day too hot or too cold (%1)</source>
        <translation>un día demasiado caluroso o demasiado frío (%1)</translation>
    </message>
    <message>
        <source>By the weather of the years reckoned, coats put on as planned stay undisturbed %1.</source>
        <translation>Según el clima de los años calculados, las capas puestas como está previsto quedan sin contratiempos: %1.</translation>
    </message>
    <message>
        <source>With the works begun on %1 the first coat falls into the best week of the year, and they stay undisturbed %2.</source>
        <translation>Si la obra empieza el %1, la primera capa cae en la mejor semana del año, y quedan sin contratiempos: %2.</translation>
    </message>
    <message>
        <source>%1: in the mean weather of its day fresh plaster loses %2 of water; from %3 on it may crack while it is soft. Begin at dawn, keep sun and wind off it, and lay wet sacks on as soon as it bears them.</source>
        <translation>%1: con el clima promedio de su día, el repello fresco pierde agua a razón de %2; desde %3 se puede rajar mientras está blando. Empiece al amanecer, protéjalo del sol y del viento, y póngale costales mojados en cuanto los aguante.</translation>
    </message>
    <message>
        <source>The plan is reckoned with few records. %1: %2 so far; from %3 on their middle value says more.</source>
        <translation>El plan se calcula con pocos registros. %1: hasta ahora %2; desde %3, su valor del medio dice más.</translation>
    </message>
    <message>
        <source>%1: the records say %2, and the plan is reckoned with the %3 entered. Find out why, or let the records stand in its place.</source>
        <translation>%1: los registros dicen %2, y el plan se calcula con lo anotado, %3. Averigüe por qué, o deje que los registros tomen su lugar.</translation>
    </message>
    <message>
        <source>Day on which the first task may begin; nothing begins before it.</source>
        <translation>Día en que puede empezar la primera tarea; antes no empieza nada.</translation>
    </message>
    <message>
        <source>People who dig, carry spoil and lay the stone bed each working day.</source>
        <translation>Personas que cavan, llevan la tierra sacada y ponen el lecho de piedra cada día de trabajo.</translation>
    </message>
    <message>
        <source>How many of the people on a coat lay plaster with skill; the others mix, carry and hand up.</source>
        <translation>Cuántas de las personas de una capa saben poner repello; las demás preparan la mezcla, la llevan y la alcanzan.</translation>
    </message>
    <message>
        <source>First day on which nobody works: a feast, a market, a funeral, a day kept for sowing.</source>
        <translation>Primer día en que nadie trabaja: una fiesta, un mercado, un entierro, un día guardado para la siembra.</translation>
    </message>
    <message>
        <source>How many days nobody works, the first one counted; wetting goes on.</source>
        <translation>Cuántos días nadie trabaja, contando el primero; se sigue mojando.</translation>
    </message>
    <message>
        <source>What the days are kept for, in a word; it is printed in the calendar.</source>
        <translation>Para qué se guardan los días, en una palabra; se imprime en el calendario.</translation>
    </message>
    <message>
        <source>Hours of work behind one person-day, breaks not counted.</source>
        <translation>Horas de trabajo que tiene un jornal, sin contar los descansos.</translation>
    </message>
    <message>
        <source>Hours of daylight and cool weather in which a coat is begun and finished, without a stop over night.</source>
        <translation>Horas de luz y de fresco en que una capa se empieza y se termina, sin parar de noche.</translation>
    </message>
    <message>
        <source>Boards or floors on which mortar is mixed at the same time, each with its own mixers.</source>
        <translation>Tablas o pisos donde se prepara mezcla al mismo tiempo, cada uno con su propia gente.</translation>
    </message>
    <message>
        <source>Time it with a watch: from filling the gauge boxes until the batch at one place is ready to carry.</source>
        <translation>Mídalo con reloj: desde llenar los cajones de medida hasta que la tanda de un lugar está lista para llevar.</translation>
    </message>
    <message>
        <source>Time from wetting the cement until the mortar stiffens; what is older is thrown away, not wetted again. Try it on a hot day.</source>
        <translation>Tiempo desde que se moja el cemento hasta que el mortero endurece; el que pasa de ese tiempo se bota, no se vuelve a mojar. Pruébelo en un día caluroso.</translation>
    </message>
    <message>
        <source>People who pour water over the sacks on each day of curing, rest days too; they are not counted among the diggers.</source>
        <translation>Personas que echan agua a los costales cada día de curado, también los días de descanso; no se cuentan entre las que cavan.</translation>
    </message>
    <message>
        <source>How often the sacks are wetted on a day of curing; in dry wind more often.</source>
        <translation>Cuántas veces se mojan los costales en un día de curado; con viento seco, más veces.</translation>
    </message>
    <message>
        <source>Measure it: level distance from the middle of the pit to the middle of the heap.</source>
        <translation>Mídalo: distancia a nivel desde el medio de la excavación hasta el medio del montón.</translation>
    </message>
    <message>
        <source>How many times as long the low part of a deep pit takes, where ground is thrown up twice; 1 is the same.</source>
        <translation>Cuántas veces el tiempo usual lleva la parte honda de una excavación profunda, donde la tierra se echa arriba dos veces; 1 es lo mismo.</translation>
    </message>
    <message>
        <source>Water that runs or is carried into the new tank each day; leave empty to take what the source gives in that month.</source>
        <translation>Agua que corre o se lleva al tanque nuevo cada día; deje vacío para tomar lo que da la fuente de agua en ese mes.</translation>
    </message>
    <message>
        <source>The inflow is held back to this rise, so that young plaster is loaded slowly.</source>
        <translation>El agua que entra se limita a esta subida, para que el repello nuevo se cargue despacio.</translation>
    </message>
    <message>
        <source>The walls are told in bands of this height: until when the sacks of each must stay wet.</source>
        <translation>Las paredes se indican por franjas de esta altura: hasta cuándo deben seguir mojados los costales de cada una.</translation>
    </message>
    <message>
        <source>Rain of one day from which on a fresh coat is washed or pitted; a rain gauge shows it.</source>
        <translation>Lluvia de un día desde la cual una capa fresca se lava o se llena de hoyitos; un pluviómetro la muestra.</translation>
    </message>
    <message>
        <source>The task for which a day or a number of people is wished.</source>
        <translation>La tarea para la que se desea un día o una cantidad de personas.</translation>
    </message>
    <message>
        <source>The task begins on this day or later; leave empty if it may begin as soon as it can.</source>
        <translation>La tarea empieza este día o después; deje vacío si puede empezar en cuanto sea posible.</translation>
    </message>
    <message>
        <source>People on this task; leave empty for as many as usual.</source>
        <translation>Personas en esta tarea; deje vacío para las de costumbre.</translation>
    </message>
    <message>
        <source>The work for which the district has a rate of its own.</source>
        <translation>El trabajo para el que el distrito tiene un rendimiento propio.</translation>
    </message>
    <message>
        <source>Person-days for one unit of this work when all goes well.</source>
        <translation>Jornales por una unidad de este trabajo cuando todo va bien.</translation>
    </message>
    <message>
        <source>Person-days for one unit of this work on a usual day; the plan is reckoned with it.</source>
        <translation>Jornales por una unidad de este trabajo en un día usual; con esto se calcula el plan.</translation>
    </message>
    <message>
        <source>Person-days for one unit of this work when it goes badly.</source>
        <translation>Jornales por una unidad de este trabajo cuando va mal.</translation>
    </message>
    <message>
        <source>Whether the middle values of what was measured stand in place of the figures entered.</source>
        <translation>Si los valores del medio de lo medido toman el lugar de las cifras anotadas.</translation>
    </message>
    <message>
        <source>The coat whose mix the trial batch had, counted from the dug face.</source>
        <translation>La capa cuya mezcla tenía la tanda de prueba, contando desde la cara cavada.</translation>
    </message>
    <message>
        <source>Cement in the trial batch, in bags and parts of a bag.</source>
        <translation>Cemento de la tanda de prueba, en bolsas y partes de bolsa.</translation>
    </message>
    <message>
        <source>Face that the trial batch covered: measure length and height of the patch.</source>
        <translation>Cara que cubrió la tanda de prueba: mida el largo y el alto del pedazo repellado.</translation>
    </message>
    <message>
        <source>Thickness of the patch, square to the face: push a nail in at several places and take the middle.</source>
        <translation>Espesor del pedazo repellado, a escuadra con la cara: meta un clavo en varios lugares y tome el valor del medio.</translation>
    </message>
    <message>
        <source>What was done and measured, here or on an earlier tank of the district.</source>
        <translation>Lo que se hizo y se midió, aquí o en un tanque anterior del distrito.</translation>
    </message>
    <message>
        <source>How much of it: ground dug as it lay, fill as rammed, stone bed and mortar as placed in m³; spreading in m².</source>
        <translation>Cuánto se hizo: lo cavado como tierra en banco, el relleno ya apisonado, el lecho de piedra y el mortero ya puestos, en m³; extender, en m².</translation>
    </message>
    <message>
        <source>People times days that it took, helpers counted; half a day of four people is 2.</source>
        <translation>Personas por días que llevó, contando a los ayudantes; medio día de cuatro personas es 2.</translation>
    </message>
    <message>
        <source>First day of the works</source>
        <translation>Primer día de la obra</translation>
    </message>
    <message>
        <source>Masons among them</source>
        <translation>Albañiles entre ellas</translation>
    </message>
    <message>
        <source>Closed from</source>
        <translation>No se trabaja desde el</translation>
    </message>
    <message>
        <source>Closed for</source>
        <translation>No se trabaja durante</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Hours of a person-day</source>
        <translation>Horas de un jornal</translation>
    </message>
    <message>
        <source>Hours to put on a coat</source>
        <translation>Horas para colocar una capa</translation>
    </message>
    <message>
        <source>Mixing places</source>
        <translation>Lugares de mezcla</translation>
    </message>
    <message>
        <source>Mixing one batch takes</source>
        <translation>Preparar una tanda tarda</translation>
    </message>
    <message>
        <source>A batch must be on the wall within</source>
        <translation>Una tanda debe quedar puesta en la pared en menos de</translation>
    </message>
    <message>
        <source>People who keep the sacks wet</source>
        <translation>Personas que mantienen mojados los costales</translation>
    </message>
    <message>
        <source>Wettings a day</source>
        <translation>Mojadas al día</translation>
    </message>
    <message>
        <source>Way to the spoil heap</source>
        <translation>Camino hasta el montón de tierra sacada</translation>
    </message>
    <message>
        <source>Digging low in the pit takes, times</source>
        <translation>Cavar la parte honda tarda, veces</translation>
    </message>
    <message>
        <source>Water let in for the first filling</source>
        <translation>Agua que se deja entrar en el primer llenado</translation>
    </message>
    <message>
        <source>Water may rise in a day by</source>
        <translation>El agua puede subir en un día</translation>
    </message>
    <message>
        <source>Height of a band of wall</source>
        <translation>Altura de una franja de pared</translation>
    </message>
    <message>
        <source>Heavy rain, in a day</source>
        <translation>Lluvia fuerte, en un día</translation>
    </message>
    <message>
        <source>Task</source>
        <translation>Tarea</translation>
    </message>
    <message>
        <source>Not before</source>
        <translation>No antes del</translation>
    </message>
    <message>
        <source>Wanted</source>
        <translation>Personas deseadas</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Low</source>
        <translation>Baja</translation>
    </message>
    <message>
        <source>Typical</source>
        <translation>Típica</translation>
    </message>
    <message>
        <source>High</source>
        <translation>Alta</translation>
    </message>
    <message>
        <source>Reckon with the records</source>
        <translation>Calcular con los registros</translation>
    </message>
    <message>
        <source>Coat</source>
        <translation>Capa</translation>
    </message>
    <message>
        <source>Face covered</source>
        <translation>Cara cubierta</translation>
    </message>
    <message>
        <source>Work done</source>
        <translation>Trabajo hecho</translation>
    </message>
    <message>
        <source>It took</source>
        <translation>Llevó</translation>
    </message>
    <message>
        <source>digging, as reported from practice</source>
        <translation>cavar, según lo que se cuenta de la práctica</translation>
    </message>
    <message>
        <source>digging, by the district&apos;s norm</source>
        <translation>cavar, según la norma del distrito</translation>
    </message>
    <message>
        <source>clearing the ground</source>
        <translation>limpiar el terreno</translation>
    </message>
    <message>
        <source>setting out</source>
        <translation>replantear</translation>
    </message>
    <message>
        <source>stripping topsoil</source>
        <translation>retirar la tierra vegetal</translation>
    </message>
    <message>
        <source>filling and ramming</source>
        <translation>rellenar y apisonar</translation>
    </message>
    <message>
        <source>carrying spoil up to 10 m</source>
        <translation>llevar la tierra sacada hasta 10 m</translation>
    </message>
    <message>
        <source>carrying spoil up to 20 m</source>
        <translation>llevar la tierra sacada hasta 20 m</translation>
    </message>
    <message>
        <source>carrying spoil up to 50 m</source>
        <translation>llevar la tierra sacada hasta 50 m</translation>
    </message>
    <message>
        <source>trimming walls and floor</source>
        <translation>emparejar paredes y fondo</translation>
    </message>
    <message>
        <source>laying pipe</source>
        <translation>poner tubería</translation>
    </message>
    <message>
        <source>plastering one coat</source>
        <translation>repellar una capa</translation>
    </message>
    <message>
        <source>keeping sacks wet</source>
        <translation>mantener mojados los costales</translation>
    </message>
    <message>
        <source>watching the first filling</source>
        <translation>vigilar el primer llenado</translation>
    </message>
    <message>
        <source>testing for leaks</source>
        <translation>hacer la prueba de fuga</translation>
    </message>
    <message>
        <source>building the fence</source>
        <translation>hacer la cerca</translation>
    </message>
    <message>
        <source>building the silt trap</source>
        <translation>hacer el desarenador</translation>
    </message>
    <message>
        <source>building the overflow</source>
        <translation>hacer el rebosadero</translation>
    </message>
    <message>
        <source>planting the beds</source>
        <translation>sembrar las camas</translation>
    </message>
    <message>
        <source>Ramming fill</source>
        <translation>Apisonar relleno</translation>
    </message>
    <message>
        <source>Spreading plaster</source>
        <translation>Extender repello</translation>
    </message>
    <message>
        <source>%1 job</source>
        <translation>%1 trabajo</translation>
    </message>
    <message numerus="yes">
        <source>%1 jobs</source>
        <translation>
            <numerusform>%1 trabajo</numerusform>
            <numerusform>%1 trabajos</numerusform>
        </translation>
    </message>
    <message>
        <source>a quarter of a day</source>
        <translation>un cuarto de día</translation>
    </message>
    <message>
        <source>half a day</source>
        <translation>medio día</translation>
    </message>
    <message>
        <source>three quarters of a day</source>
        <translation>tres cuartos de día</translation>
    </message>
    <message>
        <source>digging, %1</source>
        <translation>cavar, %1</translation>
    </message>
    <message>
        <source>every time</source>
        <translation>todas las veces</translation>
    </message>
    <message numerus="yes">
        <source>%1 times in %2</source>
        <translation>
            <numerusform>%1 vez de cada %2</numerusform>
            <numerusform>%1 veces de cada %2</numerusform>
        </translation>
    </message>
    <message>
        <source>once in %1 times</source>
        <translation>una vez de cada %1</translation>
    </message>
    <message>
        <source>less than once in %1 times</source>
        <translation>menos de una vez de cada %1</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nunca</translation>
    </message>
    <message>
        <source>Not counted, for what they cost or how much of them is needed is not known: %1. What is free stands in the price list with a price of 0.</source>
        <translation>No contado, porque no se conoce lo que cuesta o cuánto hace falta: %1. Lo que no cuesta va en la lista de precios con precio 0.</translation>
    </message>
    <message>
        <source>Not compared, for their price or their digging is not known: %1.</source>
        <translation>No comparado, porque no se conoce su precio o su excavación: %1.</translation>
    </message>
    <message>
        <source>No lining can be compared yet: enter what one costs, how long it lasts and what its upkeep takes. All but the moulded tank need the works, too, and what a labourer costs, for their digging.</source>
        <translation>Todavía no se puede comparar ningún revestimiento: anote lo que cuesta uno, cuánto dura y lo que pide su mantenimiento. Todos menos el tanque moldeado necesitan también la obra y lo que cuesta un peón, por su excavación.</translation>
    </message>
    <message>
        <source>Only one lining can be reckoned; enter what the others cost to compare them.</source>
        <translation>Solo se puede calcular un revestimiento; anote lo que cuestan los otros para compararlos.</translation>
    </message>
    <message>
        <source>Compared is the lining with the digging that it needs. What every tank needs, whatever its lining, is left out of all of them: pipes, fence, silt trap, overflow, clearing, filling and other things of your own.</source>
        <translation>Se compara el revestimiento con la excavación que necesita. Lo que todo tanque necesita, sea cual sea su revestimiento, queda fuera de todos: tuberías, cerco, desarenador, rebose, limpieza, llenado y otras cosas propias.</translation>
    </message>
    <message>
        <source>is not part of this project; its rates were left out</source>
        <translation>no es parte de este proyecto; sus rendimientos quedaron fuera</translation>
    </message>
    <message>
        <source>%1 waits %2 for the next coat after its curing. Keep it under wet sacks all that time: the next coat does not hold on dry plaster.</source>
        <translation>%1 espera %2 a la capa siguiente después de su curado. Mantenerla bajo costales mojados todo ese tiempo: la capa siguiente no agarra sobre repello seco.</translation>
    </message>
    <message>
        <source>Nobody is entered who keeps the sacks wet. Plaster that dries early cracks and leaks: agree who comes, rest days too.</source>
        <translation>No está anotado nadie que mantenga mojados los costales. El repello que se seca temprano se agrieta y gotea: acordar quién viene, también en días de descanso.</translation>
    </message>
    <message>
        <source>%1: the middle of the records is %2, outside of what can be (%3 to %4). It is not used; look at the records again.</source>
        <translation>%1: el valor medio de los registros es %2, fuera de lo posible (%3 a %4). No se usa; revisar los registros.</translation>
    </message>
    <message>
        <source>Only digging in the soil of this site counts. Left empty: it was such soil. Record the first 1.5 m of depth; what lies deeper is reckoned slower.</source>
        <translation>Solo cuenta la excavación en el suelo de este sitio. Vacío: era ese suelo. Anote los primeros 1.5 m de profundidad; lo más hondo se calcula más lento.</translation>
    </message>
    <message>
        <source>Soil dug</source>
        <translation>Suelo excavado</translation>
    </message>
    <message>
        <source>Draft translation, to be checked by a speaker.</source>
        <translation>Traducción en borrador; debe revisarla un hablante.</translation>
    </message>
    <message>
        <source>Pegs and strings</source>
        <translation>Estacas y cordeles</translation>
    </message>
    <message>
        <source>Wet sacks</source>
        <translation>Costales mojados</translation>
    </message>
    <message>
        <source>ground as it lies</source>
        <translation>terreno tal como está</translation>
    </message>
    <message>
        <source>pegs and strings</source>
        <translation>estacas y cordeles</translation>
    </message>
    <message>
        <source>making the platform</source>
        <translation>plataforma en obra</translation>
    </message>
    <message>
        <source>pit dug and trimmed</source>
        <translation>excavación cavada y emparejada</translation>
    </message>
    <message>
        <source>stone bed</source>
        <translation>lecho de piedra</translation>
    </message>
    <message>
        <source>first filling</source>
        <translation>primer llenado</translation>
    </message>
    <message>
        <source>full tank</source>
        <translation>tanque lleno</translation>
    </message>
    <message>
        <source>field notes</source>
        <translation>apuntes de campo</translation>
    </message>
    <message>
        <source>coat %1 put on</source>
        <translation>capa %1 colocada</translation>
    </message>
    <message>
        <source>coat %1 under wet sacks</source>
        <translation>capa %1 bajo costales mojados</translation>
    </message>
    <message>
        <source>%1: %2 sand, %3 silt, %4 clay; texture: %5.</source>
        <translation>%1: %2 de arena, %3 de limo, %4 de arcilla; textura: %5.</translation>
    </message>
    <message>
        <source>Jar %1</source>
        <translation>Frasco %1</translation>
    </message>
    <message>
        <source>The jar shows %1 clay.</source>
        <translation>El frasco muestra %1 de arcilla.</translation>
    </message>
    <message>
        <source>The jars show %1 clay in the middle of %2.</source>
        <translation>Los frascos muestran %1 de arcilla, valor del medio de %2.</translation>
    </message>
    <message>
        <source>%1: %2 by ball and ribbon.</source>
        <translation>%1: %2, por bola y cinta.</translation>
    </message>
    <message>
        <source>Sample %1</source>
        <translation>Muestra %1</translation>
    </message>
    <message>
        <source>For digging this program takes such soil as: %1.</source>
        <translation>Para el cavado, este programa toma ese suelo como: %1.</translation>
    </message>
    <message>
        <source>There is clay or clay loam. The hand does not tell whether it is stiff: dig a test pit, press a thumb into its wall, and write down what the layer is.</source>
        <translation>Hay arcilla o franco arcilloso. La mano no dice si es dura: cave una calicata, apriete el pulgar contra la pared y anote qué es la capa.</translation>
    </message>
    <message>
        <source>No layer down to the floor of the pit (%1) has its soil written down.</source>
        <translation>Ninguna capa hasta el fondo de la excavación (%1) tiene anotado su suelo.</translation>
    </message>
    <message>
        <source>The weakest soil down to the floor of the pit (%1) is: %2.</source>
        <translation>El suelo más débil hasta el fondo de la excavación (%1) es: %2.</translation>
    </message>
    <message>
        <source>No water came in down to %1. Look again after the rains, or ask how high the nearest well stands then.</source>
        <translation>No entró agua hasta %1. Vuelva a mirar después de las lluvias, o pregunte a qué altura está entonces el pozo más cercano.</translation>
    </message>
    <message>
        <source>Water came in at %1 below the ground, and it may stand higher after the rains.</source>
        <translation>Entró agua a %1 bajo el suelo, y puede estar más alta después de las lluvias.</translation>
    </message>
    <message>
        <source>The ground has no fall over %1.</source>
        <translation>El terreno no tiene caída en %1.</translation>
    </message>
    <message>
        <source>The ground rises %1 over %2: the line was walked uphill. Walk it straight down the fall, or turn the signs of the drops.</source>
        <translation>El terreno sube %1 en %2: la línea se caminó cuesta arriba. Camínela en línea recta cuesta abajo, o cambie el signo de los desniveles.</translation>
    </message>
    <message>
        <source>The slope falls %1 over %2.</source>
        <translation>La ladera baja %1 en %2.</translation>
    </message>
    <message>
        <source>No jar read yet. Fill a straight jar a third with soil, the rest with water and a pinch of salt, shake it long, put it down, and measure the layers when they have settled.</source>
        <translation>Todavía no se ha leído ningún frasco. Llene un frasco recto con un tercio de tierra y el resto de agua con una pizca de sal, agítelo mucho, déjelo quieto y mida las capas cuando se hayan asentado.</translation>
    </message>
    <message>
        <source>These are shares of the height, not of the weight: clay settles loosely, so by weight there is less of it.</source>
        <translation>Son partes de la altura, no del peso: la arcilla se asienta suelta, así que en peso hay menos.</translation>
    </message>
    <message>
        <source>No soil felt yet. Knead a moist handful, squeeze it to a ball, push it to a ribbon, and write down what happens.</source>
        <translation>Todavía no se ha probado ninguna tierra con la mano. Amase un puñado húmedo, apriételo en bola, empújelo en cinta y anote lo que pasa.</translation>
    </message>
    <message>
        <source>No test pit yet. Dig one beside the tank as deep as its pit (%1), and write down each layer and where water comes in. A pit can cave in: step its sides back, and never work in it alone.</source>
        <translation>Todavía no hay calicata. Cave una al lado del tanque, tan honda como su excavación (%1), y anote cada capa y dónde entra agua. Una calicata puede derrumbarse: deje gradas en sus lados y nunca trabaje solo adentro.</translation>
    </message>
    <message>
        <source>Layers without a soil: %1. Until they are known the pits do not count for the soil of the site.</source>
        <translation>Capas sin suelo anotado: %1. Mientras no se conozca, las calicatas no cuentan para el suelo del lugar.</translation>
    </message>
    <message>
        <source>The deepest test pit ends at %1, above the floor of the tank&apos;s pit: what lies below is not known.</source>
        <translation>La calicata más honda termina a %1, más arriba del fondo de la excavación del tanque: lo que hay debajo no se conoce.</translation>
    </message>
    <message>
        <source>No slope taken yet. Hold a hose full of water along the fall, measure the level distance and both water marks, and go on from the lower staff.</source>
        <translation>Todavía no se ha medido la pendiente. Ponga una manguera llena de agua cuesta abajo, mida la distancia a nivel y las dos marcas del agua, y siga desde la vara de abajo.</translation>
    </message>
    <message>
        <source>Setting %1: %2.</source>
        <translation>Tramo %1: %2.</translation>
    </message>
    <message>
        <source>The ground was surveyed; its spot heights stay in place of this fall.</source>
        <translation>El terreno tiene cotas medidas; quedan en lugar de esta pendiente.</translation>
    </message>
    <message>
        <source>A test pit shows a weaker soil (%1) above the floor of the pit than the one entered (%2). The weakest layer decides how steep a cut may stand: enter that one.</source>
        <translation>Una calicata muestra un suelo más débil (%1) por encima del fondo de la excavación que el anotado (%2). La capa más débil decide qué tan empinado puede quedar un corte: anote esa.</translation>
    </message>
    <message>
        <source>Water came into a test pit %1 below the ground; entered is %2. Enter the highest level that was seen, for it is the one that lifts the floor.</source>
        <translation>En una calicata entró agua a %1 bajo el suelo; está anotado %2. Anote el nivel más alto que se haya visto, porque ese es el que levanta el piso.</translation>
    </message>
    <message>
        <source>Where the soil in the jar was taken, and how deep; take it from where the soil for the mix will be dug.</source>
        <translation>De dónde se tomó la tierra del frasco y a qué profundidad; tómela de donde se cavará la tierra para la mezcla.</translation>
    </message>
    <message>
        <source>Height of the lowest layer, marked one minute after the jar was put down: grains that the eye can see.</source>
        <translation>Altura de la capa de más abajo, marcada un minuto después de dejar quieto el frasco: granos que el ojo ve.</translation>
    </message>
    <message>
        <source>Height of the layer over the sand alone, marked after two hours; not from the bottom of the jar.</source>
        <translation>Altura de solo la capa que está sobre la arena, marcada a las dos horas; no desde el fondo del frasco.</translation>
    </message>
    <message>
        <source>Height of the top layer alone, when the water over it is clear; that may take a day or more.</source>
        <translation>Altura de solo la capa de arriba, cuando el agua que la cubre está clara; puede tardar un día o más.</translation>
    </message>
    <message>
        <source>Where the soil in the hand was taken, and how deep.</source>
        <translation>De dónde se tomó la tierra que se probó con la mano y a qué profundidad.</translation>
    </message>
    <message>
        <source>Moisten a handful, knead it like dough, squeeze it and open the hand. Left empty: not tried yet.</source>
        <translation>Humedezca un puñado, amáselo como masa de pan, apriételo y abra la mano. Vacío: todavía no se probó.</translation>
    </message>
    <message>
        <source>Push the ball out between thumb and finger to a flat ribbon and measure it when it breaks by its own weight; 0 when none forms.</source>
        <translation>Empuje la bola entre el pulgar y el dedo hasta hacer una cinta plana y mídala cuando se rompa por su propio peso; 0 si no se forma.</translation>
    </message>
    <message>
        <source>Rub a pinch with much water in the palm: grit like sugar, smooth like flour, or neither.</source>
        <translation>Frote una pizca con mucha agua en la palma: áspera como azúcar, suave como harina, o ninguna de las dos.</translation>
    </message>
    <message>
        <source>Name of the test pit, the same in each of its layers. Nobody climbs into a pit deeper than the waist that is not stepped back or shored.</source>
        <translation>Nombre de la calicata, el mismo en cada una de sus capas. Nadie baja a una calicata más honda que la cintura que no tenga gradas o entibado.</translation>
    </message>
    <message>
        <source>Depth of the top of the layer below the ground; 0 for the first.</source>
        <translation>Profundidad de la parte de arriba de la capa bajo el suelo; 0 para la primera.</translation>
    </message>
    <message>
        <source>Depth of the bottom of the layer below the ground; of the last layer, of the test pit.</source>
        <translation>Profundidad de la parte de abajo de la capa bajo el suelo; en la última capa, la de la calicata.</translation>
    </message>
    <message>
        <source>What the layer is. Clay is stiff when the thumb dents it but goes in only with great effort; leave the soil empty when nobody tried.</source>
        <translation>Qué es la capa. La arcilla es dura cuando el pulgar la marca pero solo entra con gran esfuerzo; deje vacío el suelo si nadie lo probó.</translation>
    </message>
    <message>
        <source>Whether water stood or seeped in there; look again on the next day. It stands highest after the rains.</source>
        <translation>Si allí había agua o entraba poco a poco; vuelva a mirar al día siguiente. Está más alta después de las lluvias.</translation>
    </message>
    <message>
        <source>Distance of one setting of the hose, held level, straight down the fall; 0: not measured yet.</source>
        <translation>Distancia de un tramo de la manguera, a nivel, en línea recta cuesta abajo; 0: todavía no se midió.</translation>
    </message>
    <message>
        <source>Water mark on the lower staff less that on the upper one; less than 0 where the ground rises.</source>
        <translation>Marca del agua en la vara de abajo menos la de la vara de arriba; menos de 0 donde el terreno sube.</translation>
    </message>
    <message>
        <source>Taken from</source>
        <translation>Tomada de</translation>
    </message>
    <message>
        <source>Silt</source>
        <translation>Limo</translation>
    </message>
    <message>
        <source>Clay</source>
        <translation>Arcilla</translation>
    </message>
    <message>
        <source>The ball</source>
        <translation>La bola</translation>
    </message>
    <message>
        <source>The ribbon breaks at</source>
        <translation>La cinta se rompe a</translation>
    </message>
    <message>
        <source>Rubbed wet it is</source>
        <translation>Frotada con agua es</translation>
    </message>
    <message>
        <source>Test pit</source>
        <translation>Calicata</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>To</source>
        <translation>A</translation>
    </message>
    <message>
        <source>Water came in</source>
        <translation>Entró agua</translation>
    </message>
    <message>
        <source>Level distance</source>
        <translation>Distancia a nivel</translation>
    </message>
    <message>
        <source>Drop</source>
        <translation>Desnivel</translation>
    </message>
    <message>
        <source>falls apart</source>
        <translation>se deshace</translation>
    </message>
    <message>
        <source>holds together</source>
        <translation>queda entera</translation>
    </message>
    <message>
        <source>gritty</source>
        <translation>áspera</translation>
    </message>
    <message>
        <source>neither gritty nor smooth</source>
        <translation>ni áspera ni suave</translation>
    </message>
    <message>
        <source>smooth like flour</source>
        <translation>suave como harina</translation>
    </message>
    <message>
        <source>sand</source>
        <translation>arena</translation>
    </message>
    <message>
        <source>loamy sand</source>
        <translation>arena franca</translation>
    </message>
    <message>
        <source>sandy loam</source>
        <translation>franco arenoso</translation>
    </message>
    <message>
        <source>loam</source>
        <translation>tierra franca</translation>
    </message>
    <message>
        <source>silt loam</source>
        <translation>franco limoso</translation>
    </message>
    <message>
        <source>silt</source>
        <translation>limo</translation>
    </message>
    <message>
        <source>sandy clay loam</source>
        <translation>franco arcillo-arenoso</translation>
    </message>
    <message>
        <source>clay loam</source>
        <translation>franco arcilloso</translation>
    </message>
    <message>
        <source>silty clay loam</source>
        <translation>franco arcillo-limoso</translation>
    </message>
    <message>
        <source>sandy clay</source>
        <translation>arcilla arenosa</translation>
    </message>
    <message>
        <source>silty clay</source>
        <translation>arcilla limosa</translation>
    </message>
    <message>
        <source>clay</source>
        <translation>arcilla</translation>
    </message>
    <message>
        <source>%1: %2 in place of %3.</source>
        <translation>%1: %2 en lugar de %3.</translation>
    </message>
    <message>
        <source>Nothing noted yet. Type in what stands on the paper forms, page by page; what follows from it is shown at once and changes nothing until you put it in place.</source>
        <translation>Todavía no hay apuntes. Escriba lo que está en las hojas de papel, página por página; lo que sale de allí se ve enseguida y no cambia nada hasta que usted lo ponga en su lugar.</translation>
    </message>
    <message>
        <source>The notes change nothing of what is entered for the site.</source>
        <translation>Los apuntes no cambian nada de lo anotado para el lugar.</translation>
    </message>
    <message>
        <source>Putting the notes in place would change:</source>
        <translation>Poner los apuntes en su lugar cambiaría:</translation>
    </message>
    <message>
        <source>Field notes</source>
        <translation>Apuntes de campo</translation>
    </message>
    <message>
        <source>Jars of soil</source>
        <translation>Frascos de tierra</translation>
    </message>
    <message>
        <source>Balls and ribbons</source>
        <translation>Bolas y cintas</translation>
    </message>
    <message>
        <source>Layers of test pits</source>
        <translation>Capas de las calicatas</translation>
    </message>
    <message>
        <source>Settings of the hose level</source>
        <translation>Tramos de la manguera de nivel</translation>
    </message>
    <message>
        <source>Ball and ribbon %1</source>
        <translation>Bola y cinta %1</translation>
    </message>
    <message>
        <source>Layer %1</source>
        <translation>Capa de suelo %1</translation>
    </message>
    <message>
        <source>Setting %1</source>
        <translation>Tramo %1</translation>
    </message>
    <message>
        <source>is not deeper than the top of the layer; measure both down from the ground</source>
        <translation>no está más honda que la parte de arriba de la capa; mida las dos desde el suelo hacia abajo</translation>
    </message>
    <message>
        <source>does not begin with a mark that this program knows</source>
        <translation>no empieza con una marca que este programa conozca</translation>
    </message>
    <message>
        <source>was not copied as it stands, for its last four signs do not fit the rest; compare it sign by sign</source>
        <translation>no se copió tal como está, pues sus últimos cuatro signos no concuerdan con el resto; compárelo signo por signo</translation>
    </message>
    <message>
        <source>holds a part that this program does not know; compare it sign by sign</source>
        <translation>contiene una parte que este programa no conoce; compárelo signo por signo</translation>
    </message>
    <message>
        <source>The design on one line</source>
        <translation>El diseño en una línea</translation>
    </message>
    <message>
        <source>%1 values, %2 to %3</source>
        <translation>%1 valores, %2 a %3</translation>
    </message>
    <message>
        <source>%1; all others 0</source>
        <translation>%1; todos los demás 0</translation>
    </message>
    <message>
        <source>on the map</source>
        <translation>en el mapa</translation>
    </message>
    <message>
        <source>as entered</source>
        <translation>según lo anotado</translation>
    </message>
    <message>
        <source>%1: as it stands there</source>
        <translation>%1: tal como está allí</translation>
    </message>
    <message>
        <source>%1: as entered</source>
        <translation>%1: según lo anotado</translation>
    </message>
    <message>
        <source>tank empty</source>
        <translation>tanque vacío</translation>
    </message>
    <message>
        <source>tank full and leaking</source>
        <translation>tanque lleno y con fuga</translation>
    </message>
    <message>
        <source>The tank</source>
        <translation>El tanque</translation>
    </message>
    <message>
        <source>Pit, platform and setting out</source>
        <translation>Excavación, plataforma y replanteo</translation>
    </message>
    <message>
        <source>Coats, materials and batches</source>
        <translation>Capas, materiales y tandas</translation>
    </message>
    <message>
        <source>Labour</source>
        <translation>Mano de obra</translation>
    </message>
    <message>
        <source>Dates and people by day</source>
        <translation>Fechas y personas por día</translation>
    </message>
    <message>
        <source>Measured on site</source>
        <translation>Medido en la obra</translation>
    </message>
    <message>
        <source>Coats in one go</source>
        <translation>Capas de una sola vez</translation>
    </message>
    <message>
        <source>First filling</source>
        <translation>Primer llenado</translation>
    </message>
    <message>
        <source>Weather window</source>
        <translation>Semanas buenas según el clima</translation>
    </message>
    <message>
        <source>Will the water last</source>
        <translation>¿Alcanzará el agua?</translation>
    </message>
    <message>
        <source>From the source</source>
        <translation>De la fuente</translation>
    </message>
    <message>
        <source>To the field</source>
        <translation>Al campo</translation>
    </message>
    <message>
        <source>Emptying</source>
        <translation>Vaciado</translation>
    </message>
    <message>
        <source>Ground, platform and spoil</source>
        <translation>Terreno, plataforma y tierra sacada</translation>
    </message>
    <message>
        <source>Stability</source>
        <translation>Estabilidad</translation>
    </message>
    <message>
        <source>Bill and shares</source>
        <translation>Presupuesto y aportes</translation>
    </message>
    <message>
        <source>Linings</source>
        <translation>Revestimientos</translation>
    </message>
    <message>
        <source>Coats in order</source>
        <translation>Capas en orden</translation>
    </message>
    <message>
        <source>from the earth inward</source>
        <translation>de la tierra hacia adentro</translation>
    </message>
    <message>
        <source>Work of each coat</source>
        <translation>Trabajo de cada capa</translation>
    </message>
    <message>
        <source>face × spreading + plaster × mixing</source>
        <translation>cara × extender + repello × preparar mezcla</translation>
    </message>
    <message>
        <source>In which a coat must be on</source>
        <translation>Plazo para colocar una capa</translation>
    </message>
    <message>
        <source>People on each coat</source>
        <translation>Personas en cada capa</translation>
    </message>
    <message>
        <source>as entered, or as wished for the coat</source>
        <translation>según lo anotado, o según el deseo para la capa</translation>
    </message>
    <message>
        <source>People needed</source>
        <translation>Personas necesarias</translation>
    </message>
    <message>
        <source>work × hours of a person-day ÷ hours for the coat, rounded up</source>
        <translation>trabajo × horas de un jornal ÷ horas para la capa, redondeado hacia arriba</translation>
    </message>
    <message>
        <source>Masons on each coat</source>
        <translation>Albañiles en cada capa</translation>
    </message>
    <message>
        <source>as entered, no more than people on the coat</source>
        <translation>según lo anotado, no más que las personas en la capa</translation>
    </message>
    <message>
        <source>Masons needed</source>
        <translation>Albañiles necesarios</translation>
    </message>
    <message>
        <source>people needed × 0.074 ÷ 0.260, rounded up</source>
        <translation>personas necesarias × 0.074 ÷ 0.260, redondeado hacia arriba</translation>
    </message>
    <message>
        <source>Batches with a whole bag</source>
        <translation>Tandas con una bolsa entera</translation>
    </message>
    <message>
        <source>plaster to mix ÷ yield of a batch, rounded up</source>
        <translation>repello para mezclar ÷ lo que rinde una tanda, redondeado hacia arriba</translation>
    </message>
    <message>
        <source>Batches an hour needed</source>
        <translation>Tandas por hora necesarias</translation>
    </message>
    <message>
        <source>batches ÷ hours for the coat</source>
        <translation>tandas ÷ horas para la capa</translation>
    </message>
    <message>
        <source>Batches an hour possible</source>
        <translation>Tandas por hora posibles</translation>
    </message>
    <message>
        <source>mixing places × 60 ÷ minutes for a batch</source>
        <translation>lugares de mezcla × 60 ÷ minutos por tanda</translation>
    </message>
    <message>
        <source>Mixing places needed</source>
        <translation>Lugares de mezcla necesarios</translation>
    </message>
    <message>
        <source>batches an hour × minutes for a batch ÷ 60, rounded up</source>
        <translation>tandas por hora × minutos por tanda ÷ 60, redondeado hacia arriba</translation>
    </message>
    <message>
        <source>Minutes to put a batch on</source>
        <translation>Minutos para colocar una tanda</translation>
    </message>
    <message>
        <source>face that it covers × spreading × hours of a person-day × 60 ÷ people who spread: their share of the work</source>
        <translation>cara que cubre × extender × horas de un jornal × 60 ÷ personas que extienden: su parte del trabajo</translation>
    </message>
    <message>
        <source>Minutes for a batch with half a bag</source>
        <translation>Minutos para una tanda con media bolsa</translation>
    </message>
    <message>
        <source>as for a whole bag</source>
        <translation>como para una bolsa entera</translation>
    </message>
    <message>
        <source>In which a batch must be on the wall</source>
        <translation>Plazo para poner una tanda en la pared</translation>
    </message>
    <message>
        <source>Bags of cement for each coat</source>
        <translation>Bolsas de cemento para cada capa</translation>
    </message>
    <message>
        <source>cement to mix ÷ weight of a bag, not rounded</source>
        <translation>cemento para mezclar ÷ peso de una bolsa, sin redondear</translation>
    </message>
    <message>
        <source>Mixing water for each coat</source>
        <translation>Agua de mezcla para cada capa</translation>
    </message>
    <message>
        <source>plaster to mix × litres for each m³</source>
        <translation>repello para mezclar × litros por cada m³</translation>
    </message>
    <message>
        <source>Sacks to cover each coat</source>
        <translation>Costales para cubrir cada capa</translation>
    </message>
    <message>
        <source>face ÷ what a sack covers × (1 + spare), rounded up</source>
        <translation>cara ÷ lo que cubre un costal × (1 + reserva), redondeado hacia arriba</translation>
    </message>
    <message>
        <source>Length and width times this, this crew could plaster</source>
        <translation>Largo y ancho multiplicados por esto: lo que esta cuadrilla podría repellar</translation>
    </message>
    <message>
        <source>found by halving: largest plan, same depth, batter and lining, whose coat the crew can put on</source>
        <translation>hallado por mitades: la planta más grande, con igual profundidad, talud y revestimiento, cuya capa puede colocar la cuadrilla</translation>
    </message>
    <message>
        <source>Clear length of that tank</source>
        <translation>Largo interior de ese tanque</translation>
    </message>
    <message>
        <source>length × factor</source>
        <translation>largo × factor</translation>
    </message>
    <message>
        <source>Clear width of that tank</source>
        <translation>Ancho interior de ese tanque</translation>
    </message>
    <message>
        <source>width × factor</source>
        <translation>ancho × factor</translation>
    </message>
    <message>
        <source>Held by that tank, filled to the overflow</source>
        <translation>Cabida de ese tanque, lleno hasta el rebosadero</translation>
    </message>
    <message>
        <source>V(h) with its own floor</source>
        <translation>V(h) con su propio piso</translation>
    </message>
    <message>
        <source>Inflow on the first day</source>
        <translation>Agua que entra el primer día</translation>
    </message>
    <message>
        <source>as entered, else flow × hours of the source in that month</source>
        <translation>según lo anotado; si no, caudal × horas de la fuente en ese mes</translation>
    </message>
    <message>
        <source>Filling starts</source>
        <translation>Empieza el llenado</translation>
    </message>
    <message>
        <source>as in the dates: last day of curing or of the days within which it must start, whichever comes first</source>
        <translation>como en las fechas: último día de curado o del plazo en que debe empezar, lo que llegue primero</translation>
    </message>
    <message>
        <source>Latest start of filling</source>
        <translation>Último día para empezar a llenar</translation>
    </message>
    <message>
        <source>last coat + days within which filling must start</source>
        <translation>última capa + días del plazo en que debe empezar el llenado</translation>
    </message>
    <message>
        <source>Tank full</source>
        <translation>Tanque lleno</translation>
    </message>
    <message>
        <source>first day on which it holds what it can up to the overflow</source>
        <translation>primer día en que guarda todo lo que cabe hasta el rebosadero</translation>
    </message>
    <message>
        <source>Water for sacks after curing</source>
        <translation>Agua para los costales después del curado</translation>
    </message>
    <message>
        <source>sum over the days of wall still to be wet × litres a day for each m²</source>
        <translation>suma, por días, de la pared que aún debe mojarse × litros al día por cada m²</translation>
    </message>
    <message>
        <source>Water to bring by hand</source>
        <translation>Agua por traer a mano</translation>
    </message>
    <message>
        <source>held if the water covered the walls by the latest start + curing, as far as the limit on the rise lets it − held then</source>
        <translation>agua que habría si cubriera las paredes a más tardar en el último comienzo + curado, hasta donde deja el límite de subida − agua que hay entonces</translation>
    </message>
    <message>
        <source>Bands of the wall: lower edge</source>
        <translation>Franjas de pared: borde de abajo</translation>
    </message>
    <message>
        <source>even steps up from the floor</source>
        <translation>pasos iguales desde el piso hacia arriba</translation>
    </message>
    <message>
        <source>Bands of the wall: upper edge</source>
        <translation>Franjas de pared: borde de arriba</translation>
    </message>
    <message>
        <source>even steps up to the overflow, then the rim</source>
        <translation>pasos iguales hasta el rebosadero; después, el borde del tanque</translation>
    </message>
    <message>
        <source>Bands of the wall: area</source>
        <translation>Franjas de pared: área</translation>
    </message>
    <message>
        <source>wet face up to the upper edge − up to the lower; wet face = floor + √(1 + batter²) × h × mean edge</source>
        <translation>cara mojada hasta el borde de arriba − hasta el de abajo; cara mojada = piso + √(1 + talud²) × h × perímetro medio</translation>
    </message>
    <message>
        <source>Bands: sacks wet from</source>
        <translation>Franjas: costales mojados desde</translation>
    </message>
    <message>
        <source>day after the last coat</source>
        <translation>día después de la última capa</translation>
    </message>
    <message>
        <source>Bands: covered by water on</source>
        <translation>Franjas: el agua las cubre el</translation>
    </message>
    <message>
        <source>first day at whose end the level is at the upper edge</source>
        <translation>primer día en que el nivel termina en el borde de arriba</translation>
    </message>
    <message>
        <source>Bands: sacks wet until</source>
        <translation>Franjas: costales mojados hasta</translation>
    </message>
    <message>
        <source>day before it is covered, not before the end of curing</source>
        <translation>día antes de que se cubra, no antes del fin del curado</translation>
    </message>
    <message>
        <source>Bands: days of wetting</source>
        <translation>Franjas: días de mojado</translation>
    </message>
    <message>
        <source>from the first to the last, both counted</source>
        <translation>del primero al último, contando los dos</translation>
    </message>
    <message>
        <source>Days of filling</source>
        <translation>Días de llenado</translation>
    </message>
    <message>
        <source>from the start until full, 366 at most</source>
        <translation>desde el comienzo hasta que se llena, 366 como máximo</translation>
    </message>
    <message>
        <source>Let in each day</source>
        <translation>Se deja entrar cada día</translation>
    </message>
    <message>
        <source>inflow, held to what raises the level by no more than the limit</source>
        <translation>agua que entra, limitada a lo que sube el nivel no más que el límite</translation>
    </message>
    <message>
        <source>Lost each day</source>
        <translation>Se pierde cada día</translation>
    </message>
    <message>
        <source>ET0 of the month × open water × (1 − cover) × surface + seepage × wet face, no more than there is</source>
        <translation>ET0 del mes × agua libre × (1 − cubierta) × superficie + filtración × cara mojada, no más de lo que hay</translation>
    </message>
    <message>
        <source>Held at the end of each day</source>
        <translation>Agua guardada al final de cada día</translation>
    </message>
    <message>
        <source>held before + let in − lost</source>
        <translation>guardada antes + entra − se pierde</translation>
    </message>
    <message>
        <source>Level at the end of each day</source>
        <translation>Nivel al final de cada día</translation>
    </message>
    <message>
        <source>h at which V(h) is what is held</source>
        <translation>h con la que V(h) es el agua guardada</translation>
    </message>
    <message>
        <source>Wall above the water each day</source>
        <translation>Pared sobre el agua cada día</translation>
    </message>
    <message>
        <source>floor + wall − wet face up to the level</source>
        <translation>piso + pared − cara mojada hasta el nivel</translation>
    </message>
    <message>
        <source>Water for sacks each day</source>
        <translation>Agua para los costales cada día</translation>
    </message>
    <message>
        <source>wall above the water still to be wet × litres a day for each m²</source>
        <translation>pared sobre el agua que aún debe mojarse × litros al día por cada m²</translation>
    </message>
    <message>
        <source>Weather years looked at</source>
        <translation>Años de clima vistos</translation>
    </message>
    <message>
        <source>all that there are</source>
        <translation>todos los que hay</translation>
    </message>
    <message>
        <source>Rain in a day that spoils a fresh coat</source>
        <translation>Lluvia en un día que daña una capa fresca</translation>
    </message>
    <message>
        <source>Week of the first coat, as planned</source>
        <translation>Semana de la primera capa, según el plan</translation>
    </message>
    <message>
        <source>week of its day; weeks count from 1 January</source>
        <translation>semana de su día; las semanas se cuentan desde el 1 de enero</translation>
    </message>
    <message>
        <source>Week with the best chance</source>
        <translation>Semana con la mejor probabilidad</translation>
    </message>
    <message>
        <source>largest share of undisturbed starts; of equal ones the planned one, else the next after it</source>
        <translation>mayor parte de comienzos sin contratiempos; entre iguales, la prevista, y si no, la siguiente después de ella</translation>
    </message>
    <message>
        <source>First coat in that week</source>
        <translation>Primera capa en esa semana</translation>
    </message>
    <message>
        <source>works begun so that it falls there, with rest days and closed days</source>
        <translation>obra empezada de modo que caiga allí, con días de descanso y días sin trabajo</translation>
    </message>
    <message>
        <source>Start of the works for it</source>
        <translation>Comienzo de la obra para eso</translation>
    </message>
    <message>
        <source>planned start moved by as many days as the first coat, then until the coat falls in the week</source>
        <translation>comienzo previsto, movido los mismos días que la primera capa; luego, hasta que la capa cae en la semana</translation>
    </message>
    <message>
        <source>Weeks of the year</source>
        <translation>Semanas del año</translation>
    </message>
    <message>
        <source>first day of each</source>
        <translation>primer día de cada una</translation>
    </message>
    <message>
        <source>Share undisturbed, by week</source>
        <translation>Parte sin contratiempos, por semana</translation>
    </message>
    <message>
        <source>start days of the week in all years on which none of the three below happens ÷ all</source>
        <translation>días de comienzo de la semana, en todos los años, en que no pasa nada de las tres cosas de abajo ÷ todos</translation>
    </message>
    <message>
        <source>Share with heavy rain, by week</source>
        <translation>Parte con lluvia fuerte, por semana</translation>
    </message>
    <message>
        <source>heavy rain on a coat&apos;s day or the day after ÷ all</source>
        <translation>lluvia fuerte el día de una capa o el día después ÷ todos</translation>
    </message>
    <message>
        <source>Share with frost, by week</source>
        <translation>Parte con helada, por semana</translation>
    </message>
    <message>
        <source>night at or below 0 °C before a coat or in the 7 days after ÷ all</source>
        <translation>noche a 0 °C o menos antes de una capa o en los 7 días después ÷ todos</translation>
    </message>
    <message>
        <source>Share too cold or too hot, by week</source>
        <translation>Parte con demasiado frío o calor, por semana</translation>
    </message>
    <message>
        <source>mean below 5 °C or maximum above 35 °C on a coat&apos;s day ÷ all</source>
        <translation>promedio bajo 5 °C o máxima sobre 35 °C el día de una capa ÷ todos</translation>
    </message>
    <message>
        <source>Coats whose drying is reckoned</source>
        <translation>Capas cuyo secado se calcula</translation>
    </message>
    <message>
        <source>those in whose month wind was measured</source>
        <translation>las que caen en un mes con viento medido</translation>
    </message>
    <message>
        <source>Air in the warmest hours</source>
        <translation>Aire en las horas más calientes</translation>
    </message>
    <message>
        <source>mean maximum of the days on which the coat falls</source>
        <translation>máxima promedio de los días en que cae la capa</translation>
    </message>
    <message>
        <source>Humidity in the warmest hours</source>
        <translation>Humedad en las horas más calientes</translation>
    </message>
    <message>
        <source>vapour pressure of the day ÷ saturation pressure at the maximum, eq. 11 and 19</source>
        <translation>presión de vapor del día ÷ presión de saturación a la máxima, ec. 11 y 19</translation>
    </message>
    <message>
        <source>Wind, km an hour</source>
        <translation>Viento, km por hora</translation>
    </message>
    <message>
        <source>mean wind × 3.6</source>
        <translation>viento promedio × 3.6</translation>
    </message>
    <message>
        <source>Water lost by the fresh plaster</source>
        <translation>Agua que pierde el repello fresco</translation>
    </message>
    <message>
        <source>5 ((T + 18)^2.5 − r (T + 18)^2.5) (V + 4) ÷ 1 000 000; T air and plaster in °C, r humidity from 0 to 1, V wind in km an hour</source>
        <translation>5 ((T + 18)^2.5 − r (T + 18)^2.5) (V + 4) ÷ 1 000 000; T aire y repello en °C, r humedad de 0 a 1, V viento en km por hora</translation>
    </message>
    <message>
        <source>Reckoned with exact shells, net</source>
        <translation>Calculado por capas exactas, neto</translation>
    </message>
    <message>
        <source>sums of the net mixes; stone: the bed</source>
        <translation>sumas de las mezclas netas; piedra: el lecho</translation>
    </message>
    <message>
        <source>Reckoned by area × thickness, net</source>
        <translation>Calculado por área × espesor, neto</translation>
    </message>
    <message>
        <source>sums of the mixes by area × thickness; stone: floor × bed</source>
        <translation>sumas de las mezclas por área × espesor; piedra: piso × lecho</translation>
    </message>
    <message>
        <source>Exact shells over the bill</source>
        <translation>Capas exactas entre la lista</translation>
    </message>
    <message>
        <source>reckoned ÷ customary</source>
        <translation>calculado ÷ acostumbrado</translation>
    </message>
    <message>
        <source>Area × thickness over the bill</source>
        <translation>Área × espesor entre la lista</translation>
    </message>
    <message>
        <source>Soil for each sand in the bill</source>
        <translation>Tierra por cada parte de arena, lista</translation>
    </message>
    <message>
        <source>soil ÷ sand</source>
        <translation>tierra ÷ arena</translation>
    </message>
    <message>
        <source>Soil for each sand in the mixes</source>
        <translation>Tierra por cada parte de arena, mezclas</translation>
    </message>
    <message>
        <source>net soil ÷ net sand</source>
        <translation>tierra neta ÷ arena neta</translation>
    </message>
    <message>
        <source>Cement that thickness and mix need</source>
        <translation>Cemento que piden espesor y mezcla</translation>
    </message>
    <message>
        <source>sum of the net mixes, exact shells</source>
        <translation>suma de las mezclas netas, capas exactas</translation>
    </message>
    <message>
        <source>The same by area × thickness</source>
        <translation>Lo mismo por área × espesor</translation>
    </message>
    <message>
        <source>sum of the mixes by area × thickness</source>
        <translation>suma de las mezclas por área × espesor</translation>
    </message>
    <message>
        <source>All coats times this would use the bill&apos;s cement</source>
        <translation>Todas las capas multiplicadas por esto gastarían el cemento de la lista</translation>
    </message>
    <message>
        <source>found by halving: cement of the exact shells with all coats × factor = cement of the bill</source>
        <translation>hallado por mitades: cemento de las capas exactas con todas las capas × factor = cemento de la lista</translation>
    </message>
    <message>
        <source>cement of the bill ÷ cement by area × thickness</source>
        <translation>cemento de la lista ÷ cemento por área × espesor</translation>
    </message>
    <message>
        <source>Coats as thick as that</source>
        <translation>Capas con ese espesor</translation>
    </message>
    <message>
        <source>thickness × factor</source>
        <translation>espesor × factor</translation>
    </message>
    <message>
        <source>Coats as thick as that, by area</source>
        <translation>Capas con ese espesor, por área</translation>
    </message>
    <message>
        <source>Soil and sand times this would use the bill&apos;s cement</source>
        <translation>Tierra y arena multiplicadas por esto gastarían el cemento de la lista</translation>
    </message>
    <message>
        <source>found by halving: cement of the exact shells with soil and sand parts × factor = cement of the bill</source>
        <translation>hallado por mitades: cemento de las capas exactas con las partes de tierra y arena × factor = cemento de la lista</translation>
    </message>
    <message>
        <source>found by halving, volumes by area × thickness</source>
        <translation>hallado por mitades, volúmenes por área × espesor</translation>
    </message>
    <message>
        <source>soil</source>
        <translation>tierra</translation>
    </message>
    <message>
        <source>soil parts × factor</source>
        <translation>partes de tierra × factor</translation>
    </message>
    <message>
        <source>sand parts × factor</source>
        <translation>partes de arena × factor</translation>
    </message>
    <message>
        <source>cement</source>
        <translation>cemento</translation>
    </message>
    <message>
        <source>cement parts, as entered</source>
        <translation>partes de cemento, según lo anotado</translation>
    </message>
    <message>
        <source>Mix that would use the bill&apos;s cement</source>
        <translation>Mezcla que gastaría el cemento de la lista</translation>
    </message>
    <message>
        <source>Each task starts</source>
        <translation>Cada tarea empieza</translation>
    </message>
    <message>
        <source>latest of: start of the works, the day wished, what each arrow to it asks for; forward pass on days that are worked; last day to start filling: last coat + days within which filling must start</source>
        <translation>lo más tarde de: comienzo de la obra, el día deseado, lo que pide cada flecha que llega; paso adelante por los días que se trabajan; último día para empezar a llenar: última capa + días del plazo en que debe empezar el llenado</translation>
    </message>
    <message>
        <source>Each task ends</source>
        <translation>Cada tarea termina</translation>
    </message>
    <message>
        <source>start + duration on its clock, last day on which anything is done</source>
        <translation>comienzo + duración en su calendario, último día en que se hace algo</translation>
    </message>
    <message>
        <source>Duration of each task</source>
        <translation>Duración de cada tarea</translation>
    </message>
    <message>
        <source>person-days ÷ people, up to the next quarter of a day, at least one; a coat one day; curing, filling and leak test their days</source>
        <translation>jornales ÷ personas, hasta el siguiente cuarto de día, como mínimo uno; una capa, un día; curado, llenado y prueba de fuga, sus días</translation>
    </message>
    <message>
        <source>Days with work on them</source>
        <translation>Días con trabajo en ellos</translation>
    </message>
    <message>
        <source>days from start to end that are worked; all days for curing and filling</source>
        <translation>días del comienzo al fin en que se trabaja; todos los días en curado y llenado</translation>
    </message>
    <message>
        <source>People on each task</source>
        <translation>Personas en cada tarea</translation>
    </message>
    <message>
        <source>labourers + masons</source>
        <translation>peones + albañiles</translation>
    </message>
    <message>
        <source>Labourers on each task</source>
        <translation>Peones en cada tarea</translation>
    </message>
    <message>
        <source>diggers, or people on a coat, or as wished; less the masons; spoil: as few as carry it while the pit is dug</source>
        <translation>cavadores, o personas en una capa, o según el deseo; menos los albañiles; tierra sacada: los menos que la llevan mientras se cava</translation>
    </message>
    <message>
        <source>Masons on each task</source>
        <translation>Albañiles en cada tarea</translation>
    </message>
    <message>
        <source>all there are for a coat, else people × skilled share, rounded up</source>
        <translation>todos los que hay para una capa; si no, personas × parte de albañil, redondeado hacia arriba</translation>
    </message>
    <message>
        <source>People wetting on each task</source>
        <translation>Personas que mojan en cada tarea</translation>
    </message>
    <message>
        <source>as entered, on curing, filling and leak test</source>
        <translation>según lo anotado, en curado, llenado y prueba de fuga</translation>
    </message>
    <message>
        <source>Share of the first day gone at the start</source>
        <translation>Parte del primer día ya pasada al comienzo</translation>
    </message>
    <message>
        <source>quarters of a day from the start of the day</source>
        <translation>cuartos de día desde el comienzo del día</translation>
    </message>
    <message>
        <source>Room of each task</source>
        <translation>Holgura de cada tarea</translation>
    </message>
    <message>
        <source>late start − early start on its clock; backward pass from the last end; curing has none of its own</source>
        <translation>comienzo tardío − comienzo temprano en su calendario; paso atrás desde el último fin; el curado no tiene holgura propia</translation>
    </message>
    <message>
        <source>Room that moves no other task</source>
        <translation>Holgura que no mueve otra tarea</translation>
    </message>
    <message>
        <source>earliest that the next task asks for − early end</source>
        <translation>lo más temprano que pide la tarea siguiente − fin temprano</translation>
    </message>
    <message>
        <source>Earliest start wished</source>
        <translation>Comienzo deseado más temprano</translation>
    </message>
    <message>
        <source>Days between two tasks</source>
        <translation>Días entre dos tareas</translation>
    </message>
    <message>
        <source>0, one after the other; spoil a quarter of a day after the pit; filling: smaller of last curing and days within which it must start, less one</source>
        <translation>0, una tras otra; tierra sacada, un cuarto de día después de la excavación; llenado: lo menor entre el último curado y el plazo en que debe empezar, menos uno</translation>
    </message>
    <message>
        <source>Days of the works</source>
        <translation>Días de la obra</translation>
    </message>
    <message>
        <source>each day from the first start to the last end</source>
        <translation>cada día del primer comienzo al último fin</translation>
    </message>
    <message>
        <source>Labourers by day</source>
        <translation>Peones por día</translation>
    </message>
    <message>
        <source>most who are there at one quarter of the day</source>
        <translation>los más que hay en un mismo cuarto del día</translation>
    </message>
    <message>
        <source>Masons by day</source>
        <translation>Albañiles por día</translation>
    </message>
    <message>
        <source>Wetters by day</source>
        <translation>Personas que mojan, por día</translation>
    </message>
    <message>
        <source>those who see to all sacks</source>
        <translation>los que atienden todos los costales</translation>
    </message>
    <message>
        <source>Water for sacks by day</source>
        <translation>Agua para costales por día</translation>
    </message>
    <message>
        <source>face of each coat that cures or waits for the next × litres a day for each m²; once filling has begun the bands of wall still to be wet</source>
        <translation>cara de cada capa que cura o espera la siguiente × litros al día por cada m²; empezado el llenado, las franjas de pared que aún deben mojarse</translation>
    </message>
    <message>
        <source>batches that count</source>
        <translation>tandas que cuentan</translation>
    </message>
    <message>
        <source>trial batches of a coat of this lining</source>
        <translation>tandas de prueba de una capa de este revestimiento</translation>
    </message>
    <message>
        <source>middle of the batches</source>
        <translation>valor del medio de las tandas</translation>
    </message>
    <message>
        <source>loose soil, sand and cement ÷ (area × thickness); the middle one, or mean of the two middle ones</source>
        <translation>tierra, arena y cemento sueltos ÷ (área × espesor); el del medio, o el promedio de los dos del medio</translation>
    </message>
    <message>
        <source>smallest of the batches</source>
        <translation>la menor de las tandas</translation>
    </message>
    <message>
        <source>as the middle</source>
        <translation>como el valor del medio</translation>
    </message>
    <message>
        <source>largest of the batches</source>
        <translation>la mayor de las tandas</translation>
    </message>
    <message>
        <source>what stands in the project without them</source>
        <translation>lo que hay en el proyecto sin ellos</translation>
    </message>
    <message>
        <source>Dry to wet, from trial batches</source>
        <translation>Suelto por colocado, de tandas de prueba</translation>
    </message>
    <message>
        <source>records that count</source>
        <translation>registros que cuentan</translation>
    </message>
    <message>
        <source>digging in this soil; other work all</source>
        <translation>cavar en este suelo; otro trabajo, todos</translation>
    </message>
    <message>
        <source>middle of the records</source>
        <translation>valor del medio de los registros</translation>
    </message>
    <message>
        <source>person-days ÷ quantity; the middle one, or mean of the two middle ones</source>
        <translation>jornales ÷ cantidad; el del medio, o el promedio de los dos del medio</translation>
    </message>
    <message>
        <source>smallest of the records</source>
        <translation>el menor de los registros</translation>
    </message>
    <message>
        <source>largest of the records</source>
        <translation>el mayor de los registros</translation>
    </message>
    <message>
        <source>as entered, else from the table of rates or the district&apos;s own</source>
        <translation>según lo anotado; si no, de la tabla de rendimientos o la del distrito</translation>
    </message>
    <message>
        <source>Ramming</source>
        <translation>Apisonar</translation>
    </message>
    <message>
        <source>Spreading</source>
        <translation>Extender</translation>
    </message>
    <message>
        <source>Mixing</source>
        <translation>Preparar mezcla</translation>
    </message>
    <message>
        <source>Outlets open at a time</source>
        <translation>Salidas abiertas a la vez</translation>
    </message>
    <message>
        <source>Head left at the outlets, tank full</source>
        <translation>Carga en las salidas, tanque lleno</translation>
    </message>
    <message>
        <source>overflow level − end of the line − losses while the outlets draw their usual flow</source>
        <translation>nivel del rebosadero − extremo de la tubería − pérdidas mientras las salidas sacan su caudal usual</translation>
    </message>
    <message>
        <source>Head left at the outlets, tank nearly empty</source>
        <translation>Carga en las salidas, tanque casi vacío</translation>
    </message>
    <message>
        <source>dead level − end of the line − losses while the outlets draw their usual flow</source>
        <translation>nivel muerto − extremo de la tubería − pérdidas mientras las salidas sacan su caudal usual</translation>
    </message>
    <message>
        <source>Head that the outlet usually needs</source>
        <translation>Carga que suele necesitar la salida</translation>
    </message>
    <message>
        <source>by kind of outlet</source>
        <translation>según el tipo de salida</translation>
    </message>
    <message>
        <source>Head over that, tank full</source>
        <translation>Carga sobre eso, tanque lleno</translation>
    </message>
    <message>
        <source>head left − head needed</source>
        <translation>carga que queda − carga necesaria</translation>
    </message>
    <message>
        <source>Head over that, tank nearly empty</source>
        <translation>Carga sobre eso, tanque casi vacío</translation>
    </message>
    <message>
        <source>The line draws down to</source>
        <translation>La tubería vacía hasta</translation>
    </message>
    <message>
        <source>highest of dead level, end of the line + 2 cm, crest − (air pressure less vapour − reserve)</source>
        <translation>lo más alto de nivel muerto, extremo de la tubería + 2 cm, parte alta − (presión del aire menos vapor − reserva)</translation>
    </message>
    <message>
        <source>Emptied in, end wide open</source>
        <translation>Se vacía en, extremo abierto del todo</translation>
    </message>
    <message>
        <source>integral of surface(z) ÷ outflow(z) over the level z, Gauss-Kronrod with 15 points</source>
        <translation>integral de superficie(z) ÷ caudal de salida(z) sobre el nivel z, Gauss-Kronrod con 15 puntos</translation>
    </message>
    <message>
        <source>Error of that time at most</source>
        <translation>Error de ese tiempo, como máximo</translation>
    </message>
    <message>
        <source>sum of the differences of the rules</source>
        <translation>suma de las diferencias entre las reglas</translation>
    </message>
    <message>
        <source>Levels while it empties</source>
        <translation>Niveles mientras se vacía</translation>
    </message>
    <message>
        <source>even steps from the overflow down</source>
        <translation>pasos iguales desde el rebosadero hacia abajo</translation>
    </message>
    <message>
        <source>Time at each level</source>
        <translation>Tiempo en cada nivel</translation>
    </message>
    <message>
        <source>integral from the overflow level down to it</source>
        <translation>integral desde el nivel del rebosadero hasta él</translation>
    </message>
    <message>
        <source>Storm</source>
        <translation>Aguacero</translation>
    </message>
    <message>
        <source>as entered; 100 mm an hour when it is not known</source>
        <translation>según lo anotado; 100 mm por hora si no se conoce</translation>
    </message>
    <message>
        <source>Water of the storm</source>
        <translation>Agua del aguacero</translation>
    </message>
    <message>
        <source>rain × sum of (runoff × area): roof at least 0.9, ground at least 0.5, opening of the tank 1</source>
        <translation>lluvia × suma de (escorrentía × área): techo al menos 0.9, terreno al menos 0.5, boca del tanque 1</translation>
    </message>
    <message>
        <source>Water of the source</source>
        <translation>Agua de la fuente</translation>
    </message>
    <message>
        <source>flow of its line to the full tank; without a line the largest of a month</source>
        <translation>caudal de su tubería con el tanque lleno; sin tubería, el mayor de un mes</translation>
    </message>
    <message>
        <source>Both together</source>
        <translation>Las dos juntas</translation>
    </message>
    <message>
        <source>storm + source</source>
        <translation>aguacero + fuente</translation>
    </message>
    <message>
        <source>Sill over the finished floor</source>
        <translation>Umbral sobre el piso terminado</translation>
    </message>
    <message>
        <source>overflow level</source>
        <translation>nivel del rebosadero</translation>
    </message>
    <message>
        <source>Water over the sill in the storm</source>
        <translation>Agua sobre el umbral en el aguacero</translation>
    </message>
    <message>
        <source>notch: Q = 0.9 × (2 ÷ 3)^1.5 √g b H^1.5; pipe: largest head of inlet, orifice, even flow and full pipe</source>
        <translation>muesca: Q = 0.9 × (2 ÷ 3)^1.5 √g b H^1.5; tubo: la mayor carga entre entrada, orificio, flujo parejo y tubo lleno</translation>
    </message>
    <message>
        <source>Water level in the storm</source>
        <translation>Nivel del agua en el aguacero</translation>
    </message>
    <message>
        <source>sill + water over it</source>
        <translation>umbral + agua sobre él</translation>
    </message>
    <message>
        <source>Freeboard left</source>
        <translation>Borde libre que queda</translation>
    </message>
    <message>
        <source>lowest part of the rim − water level</source>
        <translation>parte más baja del borde − nivel del agua</translation>
    </message>
    <message>
        <source>Carries with water at the rim</source>
        <translation>Deja pasar con el agua al borde</translation>
    </message>
    <message>
        <source>same formula with the head up to the lowest part of the rim</source>
        <translation>misma fórmula con la carga hasta la parte más baja del borde</translation>
    </message>
    <message>
        <source>Freeboard that should be left</source>
        <translation>Borde libre que debe quedar</translation>
    </message>
    <message>
        <source>5 cm</source>
        <translation>5 cm</translation>
    </message>
    <message>
        <source>Notch that would leave it</source>
        <translation>Muesca que lo dejaría</translation>
    </message>
    <message>
        <source>flow ÷ flow over 1 m of sill at that head</source>
        <translation>caudal ÷ caudal sobre 1 m de umbral con esa carga</translation>
    </message>
    <message>
        <source>Pipe that would leave it, bore</source>
        <translation>Tubo que lo dejaría, diámetro interior</translation>
    </message>
    <message>
        <source>smallest from 20 mm in steps of 5 mm whose head is small enough</source>
        <translation>el menor desde 20 mm, en pasos de 5 mm, con carga bastante pequeña</translation>
    </message>
    <message>
        <source>Water level, overflow blocked</source>
        <translation>Nivel del agua, rebosadero tapado</translation>
    </message>
    <message>
        <source>all of the flow over the rim, lowest parts first, each by the formula of the notch</source>
        <translation>todo el caudal por el borde, primero las partes más bajas, cada una con la fórmula de la muesca</translation>
    </message>
    <message>
        <source>Water over the lowest part then</source>
        <translation>Agua sobre la parte más baja entonces</translation>
    </message>
    <message>
        <source>water level − lowest part</source>
        <translation>nivel del agua − parte más baja</translation>
    </message>
    <message>
        <source>Water over each part then</source>
        <translation>Agua sobre cada parte entonces</translation>
    </message>
    <message>
        <source>water level − level of the part, 0 where dry</source>
        <translation>nivel del agua − nivel de la parte, 0 donde está seca</translation>
    </message>
    <message>
        <source>Flow over each part then</source>
        <translation>Caudal por cada parte entonces</translation>
    </message>
    <message>
        <source>0.9 × (2 ÷ 3)^1.5 √g b H^1.5</source>
        <translation>0.9 × (2 ÷ 3)^1.5 √g b H^1.5</translation>
    </message>
    <message>
        <source>Spill channel, deep</source>
        <translation>Canal de desagüe, profundidad</translation>
    </message>
    <message>
        <source>Spill channel, Manning&apos;s n</source>
        <translation>Canal de desagüe, n de Manning</translation>
    </message>
    <message>
        <source>by what it is dug in or covered with</source>
        <translation>según en qué está cavado o con qué está cubierto</translation>
    </message>
    <message>
        <source>Water in the spill channel</source>
        <translation>Agua en el canal de desagüe</translation>
    </message>
    <message>
        <source>depth of even flow: Q = A R^(2÷3) √S ÷ n</source>
        <translation>profundidad de flujo parejo: Q = A R^(2÷3) √S ÷ n</translation>
    </message>
    <message>
        <source>Speed in the spill channel</source>
        <translation>Velocidad en el canal de desagüe</translation>
    </message>
    <message>
        <source>R^(2÷3) √S ÷ n</source>
        <translation>R^(2÷3) √S ÷ n</translation>
    </message>
    <message>
        <source>Width of the water there</source>
        <translation>Ancho del agua allí</translation>
    </message>
    <message>
        <source>bottom width + 2 × side slope × depth</source>
        <translation>ancho del fondo + 2 × talud de los lados × profundidad</translation>
    </message>
    <message>
        <source>Froude number there</source>
        <translation>Número de Froude allí</translation>
    </message>
    <message>
        <source>V ÷ √(g A ÷ top width)</source>
        <translation>V ÷ √(g A ÷ ancho de arriba)</translation>
    </message>
    <message>
        <source>Speed that is safe</source>
        <translation>Velocidad que es segura</translation>
    </message>
    <message>
        <source>by soil or cover, low figure</source>
        <translation>según suelo o cubierta, cifra baja</translation>
    </message>
    <message>
        <source>Speed that scours</source>
        <translation>Velocidad que socava</translation>
    </message>
    <message>
        <source>by soil or cover, high figure</source>
        <translation>según suelo o cubierta, cifra alta</translation>
    </message>
    <message>
        <source>Flow through the trap</source>
        <translation>Caudal por el desarenador</translation>
    </message>
    <message>
        <source>as entered, else source + storm led in from roof and ground</source>
        <translation>según lo anotado; si no, fuente + aguacero que llega del techo y del terreno</translation>
    </message>
    <message>
        <source>Smallest grain that must stay</source>
        <translation>Grano más pequeño que debe quedar</translation>
    </message>
    <message>
        <source>Speed at which that grain falls</source>
        <translation>Velocidad a la que cae ese grano</translation>
    </message>
    <message>
        <source>R g d² ÷ (18 ν + √(0.75 R g d³)), R = density over water − 1, 2650 kg/m³</source>
        <translation>R g d² ÷ (18 ν + √(0.75 R g d³)), R = densidad entre la del agua − 1, 2650 kg/m³</translation>
    </message>
    <message>
        <source>Least area</source>
        <translation>Área mínima</translation>
    </message>
    <message>
        <source>flow ÷ settling speed</source>
        <translation>caudal ÷ velocidad de caída</translation>
    </message>
    <message>
        <source>Area with reserve</source>
        <translation>Área con reserva</translation>
    </message>
    <message>
        <source>2 × least area</source>
        <translation>2 × área mínima</translation>
    </message>
    <message>
        <source>Length of the trap</source>
        <translation>Largo del desarenador</translation>
    </message>
    <message>
        <source>area ÷ width</source>
        <translation>área ÷ ancho</translation>
    </message>
    <message>
        <source>Width of the trap</source>
        <translation>Ancho del desarenador</translation>
    </message>
    <message>
        <source>√(area ÷ 6): six times as long as wide</source>
        <translation>√(área ÷ 6): seis veces más largo que ancho</translation>
    </message>
    <message>
        <source>Depth of the trap</source>
        <translation>Profundidad del desarenador</translation>
    </message>
    <message>
        <source>10 cm freeboard + settling depth + depth of mud</source>
        <translation>10 cm de borde libre + profundidad para asentarse + profundidad de lodo</translation>
    </message>
    <message>
        <source>Greatest forward speed</source>
        <translation>Velocidad de paso máxima</translation>
    </message>
    <message>
        <source>0.44 × √(grain in mm)</source>
        <translation>0.44 × √(grano en mm)</translation>
    </message>
    <message>
        <source>Flow over area, a day</source>
        <translation>Caudal entre área, por día</translation>
    </message>
    <message>
        <source>flow ÷ area × 86 400 s</source>
        <translation>caudal ÷ área × 86 400 s</translation>
    </message>
    <message>
        <source>Settling depth</source>
        <translation>Profundidad para asentarse</translation>
    </message>
    <message>
        <source>flow ÷ (width × greatest forward speed)</source>
        <translation>caudal ÷ (ancho × velocidad de paso máxima)</translation>
    </message>
    <message>
        <source>Mud between two cleanings</source>
        <translation>Lodo entre dos limpiezas</translation>
    </message>
    <message>
        <source>flow × silt in it × days; the storm counts for one hour</source>
        <translation>caudal × sedimento que trae × días; el aguacero cuenta por una hora</translation>
    </message>
    <message>
        <source>Room for it</source>
        <translation>Lugar para él</translation>
    </message>
    <message>
        <source>mud ÷ (2600 kg/m³ × 0.5)</source>
        <translation>lodo ÷ (2600 kg/m³ × 0.5)</translation>
    </message>
    <message>
        <source>Depth of mud</source>
        <translation>Profundidad de lodo</translation>
    </message>
    <message>
        <source>room ÷ area</source>
        <translation>lugar ÷ área</translation>
    </message>
    <message>
        <source>Time in the trap</source>
        <translation>Tiempo en el desarenador</translation>
    </message>
    <message>
        <source>area × settling depth ÷ flow</source>
        <translation>área × profundidad para asentarse ÷ caudal</translation>
    </message>
    <message>
        <source>Smallest grain that the entered trap keeps</source>
        <translation>Grano más pequeño que retiene el desarenador anotado</translation>
    </message>
    <message>
        <source>grain that falls at 2 × flow ÷ (length × width)</source>
        <translation>grano que cae a 2 × caudal ÷ (largo × ancho)</translation>
    </message>
    <message>
        <source>Forward speed in it</source>
        <translation>Velocidad de paso en él</translation>
    </message>
    <message>
        <source>flow ÷ (width × depth)</source>
        <translation>caudal ÷ (ancho × profundidad)</translation>
    </message>
    <message>
        <source>Greatest forward speed for that grain</source>
        <translation>Velocidad de paso máxima para ese grano</translation>
    </message>
    <message>
        <source>Tank drops</source>
        <translation>Baja el tanque</translation>
    </message>
    <message>
        <source>drop ÷ hours × 24</source>
        <translation>bajada ÷ horas × 24</translation>
    </message>
    <message>
        <source>Evaporates</source>
        <translation>Se evapora</translation>
    </message>
    <message>
        <source>drop of the bucket ÷ hours × 24</source>
        <translation>bajada del balde ÷ horas × 24</translation>
    </message>
    <message>
        <source>Leaks</source>
        <translation>Fuga</translation>
    </message>
    <message>
        <source>tank − bucket</source>
        <translation>tanque − balde</translation>
    </message>
    <message>
        <source>Error of the leak</source>
        <translation>Error de la fuga</translation>
    </message>
    <message>
        <source>√2 × error of a reading ÷ hours × 24</source>
        <translation>√2 × error de una lectura ÷ horas × 24</translation>
    </message>
    <message>
        <source>Leaks, litres</source>
        <translation>Fuga, litros</translation>
    </message>
    <message>
        <source>leak × water surface at that level: 1 mm on 1 m² is 1 litre</source>
        <translation>fuga × superficie del agua a ese nivel: 1 mm en 1 m² es 1 litro</translation>
    </message>
    <message>
        <source>Leaks, share of what is held</source>
        <translation>Fuga, parte del agua guardada</translation>
    </message>
    <message>
        <source>leak ÷ volume at that level</source>
        <translation>fuga ÷ volumen a ese nivel</translation>
    </message>
    <message>
        <source>Level in the test</source>
        <translation>Nivel en la prueba</translation>
    </message>
    <message>
        <source>as entered; else overflow − half of the drop</source>
        <translation>según lo anotado; si no, rebosadero − mitad de la bajada</translation>
    </message>
    <message>
        <source>Allowed by drop</source>
        <translation>Permitido por bajada</translation>
    </message>
    <message>
        <source>10 mm in 7 days</source>
        <translation>10 mm en 7 días</translation>
    </message>
    <message>
        <source>Allowed by volume</source>
        <translation>Permitido por volumen</translation>
    </message>
    <message>
        <source>0.1 % of the volume a day ÷ water surface</source>
        <translation>0.1 % del volumen al día ÷ superficie del agua</translation>
    </message>
    <message>
        <source>flow</source>
        <translation>caudal</translation>
    </message>
    <message>
        <source>found so that the head = (1 + sum of K + f L ÷ D) V² ÷ 2g</source>
        <translation>se halla de modo que la carga = (1 + suma de K + f L ÷ D) V² ÷ 2g</translation>
    </message>
    <message>
        <source>flow by Hazen-Williams, to check</source>
        <translation>caudal según Hazen-Williams, para comprobar</translation>
    </message>
    <message>
        <source>same heads and fittings, wall by 10.67 L Q^1.852 ÷ (C^1.852 D^4.87), C 140</source>
        <translation>mismas cargas y accesorios, pared por 10.67 L Q^1.852 ÷ (C^1.852 D^4.87), C 140</translation>
    </message>
    <message>
        <source>speed</source>
        <translation>velocidad</translation>
    </message>
    <message>
        <source>flow ÷ (π D² ÷ 4)</source>
        <translation>caudal ÷ (π D² ÷ 4)</translation>
    </message>
    <message>
        <source>Reynolds number</source>
        <translation>número de Reynolds</translation>
    </message>
    <message>
        <source>V D ÷ kinematic viscosity of the water</source>
        <translation>V D ÷ viscosidad cinemática del agua</translation>
    </message>
    <message>
        <source>friction factor</source>
        <translation>factor de fricción</translation>
    </message>
    <message>
        <source>Re under 2 000: 64 ÷ Re; over 4 000: 1 ÷ √f = −2 log(k ÷ 3.7 D + 2.51 ÷ (Re √f)), k 0.0015 mm; straight between</source>
        <translation>Re bajo 2 000: 64 ÷ Re; sobre 4 000: 1 ÷ √f = −2 log(k ÷ 3.7 D + 2.51 ÷ (Re √f)), k 0.0015 mm; en línea recta entre los dos</translation>
    </message>
    <message>
        <source>head that drives the flow</source>
        <translation>carga que mueve el agua</translation>
    </message>
    <message>
        <source>water over the inlet − end of the line, or the water it dips into − head wanted there</source>
        <translation>agua sobre la entrada − extremo de la tubería, o el agua en que se hunde − carga que se quiere allí</translation>
    </message>
    <message>
        <source>length along the pipe</source>
        <translation>largo a lo largo del tubo</translation>
    </message>
    <message>
        <source>sum over the pieces of √(level² + rise²)</source>
        <translation>suma por tramos de √(nivel² + subida²)</translation>
    </message>
    <message>
        <source>head lost to the wall</source>
        <translation>carga perdida en la pared</translation>
    </message>
    <message>
        <source>f L ÷ D × V² ÷ 2g</source>
        <translation>f L ÷ D × V² ÷ 2g</translation>
    </message>
    <message>
        <source>head lost in fittings</source>
        <translation>carga perdida en accesorios</translation>
    </message>
    <message>
        <source>sum of K × V² ÷ 2g</source>
        <translation>suma de K × V² ÷ 2g</translation>
    </message>
    <message>
        <source>velocity head</source>
        <translation>carga de velocidad</translation>
    </message>
    <message>
        <source>V² ÷ 2g</source>
        <translation>V² ÷ 2g</translation>
    </message>
    <message>
        <source>pressure head at the outlet</source>
        <translation>carga de presión en la salida</translation>
    </message>
    <message>
        <source>head wanted there, or the depth that it dips in</source>
        <translation>carga que se quiere allí, o la profundidad a que se hunde</translation>
    </message>
    <message>
        <source>head at the lowest point, outlet shut</source>
        <translation>carga en el punto más bajo, salida cerrada</translation>
    </message>
    <message>
        <source>water over the inlet − lowest point of the pipe</source>
        <translation>agua sobre la entrada − punto más bajo del tubo</translation>
    </message>
    <message>
        <source>pressure at the lowest point, outlet shut</source>
        <translation>presión en el punto más bajo, salida cerrada</translation>
    </message>
    <message>
        <source>density × g × head</source>
        <translation>densidad × g × carga</translation>
    </message>
    <message>
        <source>pressure class left</source>
        <translation>lo que sobra de la clase de presión</translation>
    </message>
    <message>
        <source>class that holds − pressure with the outlet shut</source>
        <translation>clase que vale − presión con la salida cerrada</translation>
    </message>
    <message>
        <source>lowest pressure head allowed</source>
        <translation>carga de presión más baja permitida</translation>
    </message>
    <message>
        <source>vapour pressure + reserve of 2 m − air pressure of the place, as water column</source>
        <translation>presión de vapor + reserva de 2 m − presión del aire del lugar, como columna de agua</translation>
    </message>
    <message>
        <source>head that air can hold back at worst</source>
        <translation>carga que el aire puede retener en el peor caso</translation>
    </message>
    <message>
        <source>sum of the falls after all humps</source>
        <translation>suma de las caídas después de todos los puntos altos</translation>
    </message>
    <message>
        <source>heads along the line: place</source>
        <translation>cargas por la tubería: lugar</translation>
    </message>
    <message>
        <source>where the line bends and where fittings sit</source>
        <translation>donde la tubería dobla y donde hay accesorios</translation>
    </message>
    <message>
        <source>heads along the line: pipe</source>
        <translation>cargas por la tubería: tubo</translation>
    </message>
    <message>
        <source>straight between the points of the line</source>
        <translation>en línea recta entre los puntos de la tubería</translation>
    </message>
    <message>
        <source>heads along the line: length so far</source>
        <translation>cargas por la tubería: largo hasta allí</translation>
    </message>
    <message>
        <source>along the pipe</source>
        <translation>a lo largo del tubo</translation>
    </message>
    <message>
        <source>heads along the line: energy</source>
        <translation>cargas por la tubería: energía</translation>
    </message>
    <message>
        <source>water over the inlet − lost to the wall so far − fittings so far</source>
        <translation>agua sobre la entrada − perdido en la pared hasta allí − accesorios hasta allí</translation>
    </message>
    <message>
        <source>heads along the line: head line</source>
        <translation>cargas por la tubería: línea de carga</translation>
    </message>
    <message>
        <source>energy − velocity head</source>
        <translation>energía − carga de velocidad</translation>
    </message>
    <message>
        <source>heads along the line: pressure</source>
        <translation>cargas por la tubería: presión</translation>
    </message>
    <message>
        <source>head line − pipe</source>
        <translation>línea de carga − tubo</translation>
    </message>
    <message>
        <source>heads along the line: pressure with the outlet shut</source>
        <translation>cargas por la tubería: presión con la salida cerrada</translation>
    </message>
    <message>
        <source>water over the inlet − pipe</source>
        <translation>agua sobre la entrada − tubo</translation>
    </message>
    <message>
        <source>sucking stretch: from</source>
        <translation>tramo en succión: desde</translation>
    </message>
    <message>
        <source>where the pressure passes 0</source>
        <translation>donde la presión pasa por 0</translation>
    </message>
    <message>
        <source>sucking stretch: to</source>
        <translation>tramo en succión: hasta</translation>
    </message>
    <message>
        <source>sucking stretch: lowest pressure</source>
        <translation>tramo en succión: presión más baja</translation>
    </message>
    <message>
        <source>lowest of its points</source>
        <translation>la más baja de sus puntos</translation>
    </message>
    <message>
        <source>sucking stretch: where it is lowest</source>
        <translation>tramo en succión: dónde es más baja</translation>
    </message>
    <message>
        <source>place of that point</source>
        <translation>lugar de ese punto</translation>
    </message>
    <message>
        <source>stretch near boiling: from</source>
        <translation>tramo cerca de hervir: desde</translation>
    </message>
    <message>
        <source>where the pressure passes the lowest allowed</source>
        <translation>donde la presión pasa por la más baja permitida</translation>
    </message>
    <message>
        <source>stretch near boiling: to</source>
        <translation>tramo cerca de hervir: hasta</translation>
    </message>
    <message>
        <source>stretch near boiling: lowest pressure</source>
        <translation>tramo cerca de hervir: presión más baja</translation>
    </message>
    <message>
        <source>stretch near boiling: where it is lowest</source>
        <translation>tramo cerca de hervir: dónde es más baja</translation>
    </message>
    <message>
        <source>humps: place</source>
        <translation>puntos altos: lugar</translation>
    </message>
    <message>
        <source>high points between inlet and outlet</source>
        <translation>puntos altos entre la entrada y la salida</translation>
    </message>
    <message>
        <source>humps: over the finished floor</source>
        <translation>puntos altos: sobre el piso terminado</translation>
    </message>
    <message>
        <source>level of the pipe there</source>
        <translation>nivel del tubo allí</translation>
    </message>
    <message>
        <source>humps: rise</source>
        <translation>puntos altos: subida</translation>
    </message>
    <message>
        <source>over the lowest point since the inlet or the hump before</source>
        <translation>sobre el punto más bajo desde la entrada o el punto alto anterior</translation>
    </message>
    <message>
        <source>humps: fall</source>
        <translation>puntos altos: caída</translation>
    </message>
    <message>
        <source>to the lowest point before the next hump or the outlet</source>
        <translation>hasta el punto más bajo antes del siguiente punto alto o la salida</translation>
    </message>
    <message>
        <source>humps: over the straight line</source>
        <translation>puntos altos: sobre la línea recta</translation>
    </message>
    <message>
        <source>over the line from inlet to outlet</source>
        <translation>sobre la línea de la entrada a la salida</translation>
    </message>
    <message>
        <source>humps: pressure</source>
        <translation>puntos altos: presión</translation>
    </message>
    <message>
        <source>head line − pipe at the flow found</source>
        <translation>línea de carga − tubo, con el caudal hallado</translation>
    </message>
    <message>
        <source>Work, all tasks together</source>
        <translation>Trabajo, todas las tareas</translation>
    </message>
    <message>
        <source>sum of the person-days</source>
        <translation>suma de los jornales</translation>
    </message>
    <message>
        <source>Skilled person-days among them</source>
        <translation>De eso, jornales de albañil</translation>
    </message>
    <message>
        <source>sum of the masons&apos; share</source>
        <translation>suma de la parte de los albañiles</translation>
    </message>
    <message>
        <source>Person-days of each task</source>
        <translation>Jornales de cada tarea</translation>
    </message>
    <message>
        <source>quantity × rate</source>
        <translation>cantidad × rendimiento</translation>
    </message>
    <message>
        <source>Person-days at the low rate</source>
        <translation>Jornales con el rendimiento bajo</translation>
    </message>
    <message>
        <source>quantity × low rate of the table, or of the district</source>
        <translation>cantidad × rendimiento bajo de la tabla, o del distrito</translation>
    </message>
    <message>
        <source>Person-days at the high rate</source>
        <translation>Jornales con el rendimiento alto</translation>
    </message>
    <message>
        <source>quantity × high rate of the table, or of the district</source>
        <translation>cantidad × rendimiento alto de la tabla, o del distrito</translation>
    </message>
    <message>
        <source>Skilled share of each task</source>
        <translation>Parte de albañil en cada tarea</translation>
    </message>
    <message>
        <source>person-days × 0.074 ÷ 0.260 for coats, × 1 ÷ 4.5 for stone bed, trap and overflow</source>
        <translation>jornales × 0.074 ÷ 0.260 para capas, × 1 ÷ 4.5 para lecho de piedra, desarenador y rebosadero</translation>
    </message>
    <message>
        <source>Person-days for each unit of work</source>
        <translation>Jornales por cada unidad de trabajo</translation>
    </message>
    <message>
        <source>table of rates, the district&apos;s own rate or the rate entered; below 1.5 m × the factor for deep digging; a coat: spreading + mixing × plaster ÷ face; carrying: less what the digging rate includes; wetting: × rounds a day ÷ 3 × people</source>
        <translation>tabla de rendimientos, el propio del distrito o el anotado; bajo 1.5 m × el factor de cavar hondo; una capa: extender + preparar mezcla × repello ÷ cara; llevar tierra: menos lo que ya incluye el de cavar; mojar: × vueltas al día ÷ 3 × personas</translation>
    </message>
    <message>
        <source>Digging by the district norm</source>
        <translation>Cavar según la norma del distrito</translation>
    </message>
    <message>
        <source>pit × 0.8 person-days for each m³</source>
        <translation>excavación × 0.8 jornales por cada m³</translation>
    </message>
    <message>
        <source>Digging by what people report</source>
        <translation>Cavar según lo que cuenta la gente</translation>
    </message>
    <message>
        <source>pit × 0.62 person-days for each m³</source>
        <translation>excavación × 0.62 jornales por cada m³</translation>
    </message>
    <message>
        <source>ground to clear</source>
        <translation>terreno por limpiar</translation>
    </message>
    <message>
        <source>outline of the pit at the ground, walkway and 1 m more all round</source>
        <translation>contorno de la excavación a ras de suelo, pasillo y 1 m más todo alrededor</translation>
    </message>
    <message>
        <source>the job</source>
        <translation>el trabajo</translation>
    </message>
    <message>
        <source>topsoil to strip</source>
        <translation>tierra vegetal por retirar</translation>
    </message>
    <message>
        <source>topsoil stripped first</source>
        <translation>tierra vegetal que se retira primero</translation>
    </message>
    <message>
        <source>platform to cut</source>
        <translation>plataforma por cortar</translation>
    </message>
    <message>
        <source>cut for the platform</source>
        <translation>corte para la plataforma</translation>
    </message>
    <message>
        <source>platform to ram</source>
        <translation>plataforma por apisonar</translation>
    </message>
    <message>
        <source>fill for the platform</source>
        <translation>relleno para la plataforma</translation>
    </message>
    <message>
        <source>digging to 1.5 m</source>
        <translation>cavar hasta 1.5 m</translation>
    </message>
    <message>
        <source>pit less what lies deeper than 1.5 m</source>
        <translation>excavación menos lo que está a más de 1.5 m</translation>
    </message>
    <message>
        <source>digging below 1.5 m</source>
        <translation>cavar bajo 1.5 m</translation>
    </message>
    <message>
        <source>pit below 1.5 m under the ground, same formula as for the pit</source>
        <translation>excavación a más de 1.5 m bajo el suelo, misma fórmula que para la excavación</translation>
    </message>
    <message>
        <source>spoil to carry</source>
        <translation>tierra sacada por llevar</translation>
    </message>
    <message>
        <source>spoil left over, as it lies</source>
        <translation>tierra sacada que sobra, en banco</translation>
    </message>
    <message>
        <source>pit faces to trim</source>
        <translation>caras de la excavación por emparejar</translation>
    </message>
    <message>
        <source>pit floor + edge half way down × pit depth × √(1 + batter²)</source>
        <translation>fondo de la excavación + perímetro a media altura × profundidad de la excavación × √(1 + talud²)</translation>
    </message>
    <message>
        <source>pipes to lay</source>
        <translation>tubos por poner</translation>
    </message>
    <message>
        <source>level length of both ways</source>
        <translation>largo a nivel de los dos recorridos</translation>
    </message>
    <message>
        <source>volume of the bed, net</source>
        <translation>volumen del lecho, neto</translation>
    </message>
    <message>
        <source>wetting, days</source>
        <translation>mojado, días</translation>
    </message>
    <message>
        <source>days under wet sacks of all coats, and days that sacks stay wet outside of them</source>
        <translation>días bajo costales mojados de todas las capas, y días que los costales siguen mojados fuera de ellos</translation>
    </message>
    <message>
        <source>silt trap</source>
        <translation>desarenador</translation>
    </message>
    <message>
        <source>overflow</source>
        <translation>rebosadero</translation>
    </message>
    <message>
        <source>fence</source>
        <translation>cerca</translation>
    </message>
    <message>
        <source>all round, 1 m outside the clear opening</source>
        <translation>todo alrededor, a 1 m por fuera de la boca interior</translation>
    </message>
    <message>
        <source>filling, days</source>
        <translation>llenado, días</translation>
    </message>
    <message>
        <source>days of the first filling</source>
        <translation>días del primer llenado</translation>
    </message>
    <message>
        <source>leak test</source>
        <translation>prueba de fuga</translation>
    </message>
    <message>
        <source>beds to plant</source>
        <translation>camas por sembrar</translation>
    </message>
    <message>
        <source>sum of the beds</source>
        <translation>suma de las camas</translation>
    </message>
    <message>
        <source>faces of the coats</source>
        <translation>caras de las capas</translation>
    </message>
    <message>
        <source>face of the coat</source>
        <translation>cara de la capa</translation>
    </message>
    <message>
        <source>Quantity of work</source>
        <translation>Cantidad de trabajo</translation>
    </message>
    <message>
        <source>Thickness of each layer</source>
        <translation>Espesor de cada capa del revestimiento</translation>
    </message>
    <message>
        <source>square to the face, as entered; of the cove its radius</source>
        <translation>a escuadra con la cara, según lo anotado; de la media caña, su radio</translation>
    </message>
    <message>
        <source>Volume of each layer, finished</source>
        <translation>Volumen de cada parte, terminada</translation>
    </message>
    <message>
        <source>exact shell between its two faces, floor and wall together</source>
        <translation>capa exacta entre sus dos caras, piso y pared juntos</translation>
    </message>
    <message>
        <source>Face of each layer that is worked</source>
        <translation>Cara que se trabaja de cada parte</translation>
    </message>
    <message>
        <source>for a coat its inner face: floor + √(1 + batter²) × height × mean edge; for bed and rim the top</source>
        <translation>de una capa, su cara de adentro: piso + √(1 + talud²) × alto × perímetro medio; de lecho y borde, la de arriba</translation>
    </message>
    <message>
        <source>Thickness of each coat</source>
        <translation>Espesor de cada capa</translation>
    </message>
    <message>
        <source>square to the face, as entered</source>
        <translation>a escuadra con la cara, según lo anotado</translation>
    </message>
    <message>
        <source>Face of each coat</source>
        <translation>Cara de cada capa</translation>
    </message>
    <message>
        <source>finished inner face, floor and wall</source>
        <translation>cara de adentro terminada, piso y pared</translation>
    </message>
    <message>
        <source>Plaster of each coat, exact shell</source>
        <translation>Repello de cada capa, capa exacta</translation>
    </message>
    <message>
        <source>volume of the layer; the last coat also holds cove and rim</source>
        <translation>volumen de la capa; la última capa incluye también media caña y borde</translation>
    </message>
    <message>
        <source>Plaster by area × thickness</source>
        <translation>Repello por área × espesor</translation>
    </message>
    <message>
        <source>(clear floor + clear wall) × thickness: the rule on paper, to stand beside the exact shell</source>
        <translation>(piso interior + pared interior) × espesor: la regla en papel, para poner al lado de la capa exacta</translation>
    </message>
    <message>
        <source>Plaster to mix for each coat</source>
        <translation>Repello para mezclar, por capa</translation>
    </message>
    <message>
        <source>shell × (1 + waste); coat 1 also × (1 + unevenness)</source>
        <translation>capa exacta × (1 + desperdicio); la capa 1 también × (1 + irregularidad)</translation>
    </message>
    <message>
        <source>Clay in soil and sand together</source>
        <translation>Arcilla en la tierra y la arena juntas</translation>
    </message>
    <message>
        <source>clay of the soil × soil parts ÷ (soil + sand parts)</source>
        <translation>arcilla de la tierra × partes de tierra ÷ (partes de tierra + arena)</translation>
    </message>
    <message>
        <source>Cement: net weight</source>
        <translation>Cemento: peso neto</translation>
    </message>
    <message>
        <source>sum over all coats of the net mix</source>
        <translation>suma de la mezcla neta de todas las capas</translation>
    </message>
    <message>
        <source>Cement: to order</source>
        <translation>Cemento: para pedir</translation>
    </message>
    <message>
        <source>whole bags × weight of a bag</source>
        <translation>bolsas enteras × peso de una bolsa</translation>
    </message>
    <message>
        <source>Cement bags, net</source>
        <translation>Bolsas de cemento, neto</translation>
    </message>
    <message>
        <source>net cement ÷ weight of a bag</source>
        <translation>cemento neto ÷ peso de una bolsa</translation>
    </message>
    <message>
        <source>Cement bags to order</source>
        <translation>Bolsas de cemento para pedir</translation>
    </message>
    <message>
        <source>cement of the plaster to mix ÷ weight of a bag, rounded up to whole bags</source>
        <translation>cemento del repello para mezclar ÷ peso de una bolsa, redondeado hacia arriba a bolsas enteras</translation>
    </message>
    <message>
        <source>Soil, net</source>
        <translation>Tierra, neto</translation>
    </message>
    <message>
        <source>Soil to dig and sieve</source>
        <translation>Tierra para cavar y cernir</translation>
    </message>
    <message>
        <source>soil of the plaster to mix ÷ (1 − lost in sieving), rounded up to 0.1 m³</source>
        <translation>tierra del repello para mezclar ÷ (1 − pérdida al cernir), redondeado hacia arriba a 0.1 m³</translation>
    </message>
    <message>
        <source>Sand, net</source>
        <translation>Arena, neto</translation>
    </message>
    <message>
        <source>Sand to order, damp</source>
        <translation>Arena para pedir, húmeda</translation>
    </message>
    <message>
        <source>sand of the plaster to mix ÷ (1 − lost in sieving) × (1 + bulking), rounded up to 0.1 m³</source>
        <translation>arena del repello para mezclar ÷ (1 − pérdida al cernir) × (1 + abultamiento), redondeado hacia arriba a 0.1 m³</translation>
    </message>
    <message>
        <source>Stone of the bed, net</source>
        <translation>Piedra del lecho, neto</translation>
    </message>
    <message>
        <source>volume of the stone bed</source>
        <translation>volumen del lecho de piedra</translation>
    </message>
    <message>
        <source>Stone to bring, loose</source>
        <translation>Piedra para traer, suelta</translation>
    </message>
    <message>
        <source>bed × (1 + unevenness) × (1 + waste) × loose stone for each m³ of bed, rounded up to 0.1 m³</source>
        <translation>lecho × (1 + irregularidad) × (1 + desperdicio) × piedra suelta por cada m³ de lecho, redondeado hacia arriba a 0.1 m³</translation>
    </message>
    <message>
        <source>Water, net</source>
        <translation>Agua, neto</translation>
    </message>
    <message>
        <source>mixing water + curing water</source>
        <translation>agua de mezcla + agua de curado</translation>
    </message>
    <message>
        <source>Water to bring</source>
        <translation>Agua para traer</translation>
    </message>
    <message>
        <source>mixing water + curing water, rounded up</source>
        <translation>agua de mezcla + agua de curado, redondeado hacia arriba</translation>
    </message>
    <message>
        <source>Mixing water, net</source>
        <translation>Agua de mezcla, neto</translation>
    </message>
    <message>
        <source>plaster, exact shells × litres for each m³</source>
        <translation>repello, capas exactas × litros por cada m³</translation>
    </message>
    <message>
        <source>Mixing water to bring</source>
        <translation>Agua de mezcla para traer</translation>
    </message>
    <message>
        <source>plaster to mix × litres for each m³, rounded up</source>
        <translation>repello para mezclar × litros por cada m³, redondeado hacia arriba</translation>
    </message>
    <message>
        <source>Curing water, net</source>
        <translation>Agua de curado, neto</translation>
    </message>
    <message>
        <source>face of each coat × litres a day for each m² × its days under wet sacks</source>
        <translation>cara de cada capa × litros al día por cada m² × sus días bajo costales mojados</translation>
    </message>
    <message>
        <source>Curing water to bring</source>
        <translation>Agua de curado para traer</translation>
    </message>
    <message>
        <source>as net, rounded up</source>
        <translation>como el neto, redondeado hacia arriba</translation>
    </message>
    <message>
        <source>Wet sacks, net</source>
        <translation>Costales mojados, neto</translation>
    </message>
    <message>
        <source>largest face of a coat ÷ what a sack covers; one set is used again for each coat</source>
        <translation>cara más grande de una capa ÷ lo que cubre un costal; un juego se usa de nuevo en cada capa</translation>
    </message>
    <message>
        <source>Wet sacks to bring</source>
        <translation>Costales mojados para traer</translation>
    </message>
    <message>
        <source>net × (1 + spare), rounded up</source>
        <translation>neto × (1 + reserva), redondeado hacia arriba</translation>
    </message>
    <message>
        <source>soil for each coat</source>
        <translation>tierra para cada capa</translation>
    </message>
    <message>
        <source>plaster × dry to wet × soil parts ÷ all parts</source>
        <translation>repello × suelto por colocado × partes de tierra ÷ total de partes</translation>
    </message>
    <message>
        <source>sand for each coat</source>
        <translation>arena para cada capa</translation>
    </message>
    <message>
        <source>plaster × dry to wet × sand parts ÷ all parts</source>
        <translation>repello × suelto por colocado × partes de arena ÷ total de partes</translation>
    </message>
    <message>
        <source>cement for each coat, loose</source>
        <translation>cemento para cada capa, suelto</translation>
    </message>
    <message>
        <source>plaster × dry to wet × cement parts ÷ all parts</source>
        <translation>repello × suelto por colocado × partes de cemento ÷ total de partes</translation>
    </message>
    <message>
        <source>cement for each coat</source>
        <translation>cemento para cada capa</translation>
    </message>
    <message>
        <source>loose cement × its loose weight</source>
        <translation>cemento suelto × su peso suelto</translation>
    </message>
    <message>
        <source>Exact shells</source>
        <translation>Capas exactas</translation>
    </message>
    <message>
        <source>Area × thickness</source>
        <translation>Área × espesor</translation>
    </message>
    <message>
        <source>To mix</source>
        <translation>Para mezclar</translation>
    </message>
    <message>
        <source>for coat number</source>
        <translation>para la capa número</translation>
    </message>
    <message>
        <source>the coats in order, from the earth</source>
        <translation>las capas en orden, desde la tierra</translation>
    </message>
    <message>
        <source>bags of cement</source>
        <translation>bolsas de cemento</translation>
    </message>
    <message>
        <source>one bag, or half of one</source>
        <translation>una bolsa, o media</translation>
    </message>
    <message>
        <source>soil parts × cement ÷ its loose weight ÷ cement parts</source>
        <translation>partes de tierra × cemento ÷ su peso suelto ÷ partes de cemento</translation>
    </message>
    <message>
        <source>sand parts × cement ÷ its loose weight ÷ cement parts</source>
        <translation>partes de arena × cemento ÷ su peso suelto ÷ partes de cemento</translation>
    </message>
    <message>
        <source>bags × weight of a bag</source>
        <translation>bolsas × peso de una bolsa</translation>
    </message>
    <message>
        <source>plaster that it yields</source>
        <translation>repello que rinde</translation>
    </message>
    <message>
        <source>soil, sand and cement, loose ÷ dry to wet</source>
        <translation>tierra, arena y cemento, sueltos ÷ suelto por colocado</translation>
    </message>
    <message>
        <source>face that it covers</source>
        <translation>cara que cubre</translation>
    </message>
    <message>
        <source>yield ÷ thickness of the coat</source>
        <translation>lo que rinde ÷ espesor de la capa</translation>
    </message>
    <message>
        <source>batches for the coat</source>
        <translation>tandas para la capa</translation>
    </message>
    <message>
        <source>plaster to mix ÷ yield, rounded up</source>
        <translation>repello para mezclar ÷ lo que rinde, redondeado hacia arriba</translation>
    </message>
    <message>
        <source>gauge boxes of soil</source>
        <translation>cajones de medida de tierra</translation>
    </message>
    <message>
        <source>soil ÷ what the box holds</source>
        <translation>tierra ÷ cabida del cajón</translation>
    </message>
    <message>
        <source>gauge boxes of sand</source>
        <translation>cajones de medida de arena</translation>
    </message>
    <message>
        <source>sand ÷ what the box holds</source>
        <translation>arena ÷ cabida del cajón</translation>
    </message>
    <message>
        <source>pans of soil</source>
        <translation>bateas de tierra</translation>
    </message>
    <message>
        <source>soil ÷ what the pan holds</source>
        <translation>tierra ÷ cabida de la batea</translation>
    </message>
    <message>
        <source>pans of sand</source>
        <translation>bateas de arena</translation>
    </message>
    <message>
        <source>sand ÷ what the pan holds</source>
        <translation>arena ÷ cabida de la batea</translation>
    </message>
    <message>
        <source>buckets of soil</source>
        <translation>baldes de tierra</translation>
    </message>
    <message>
        <source>soil ÷ what the bucket holds</source>
        <translation>tierra ÷ cabida del balde</translation>
    </message>
    <message>
        <source>buckets of sand</source>
        <translation>baldes de arena</translation>
    </message>
    <message>
        <source>sand ÷ what the bucket holds</source>
        <translation>arena ÷ cabida del balde</translation>
    </message>
    <message>
        <source>Batch with a whole bag</source>
        <translation>Tanda con una bolsa entera</translation>
    </message>
    <message>
        <source>Batch with half a bag</source>
        <translation>Tanda con media bolsa</translation>
    </message>
    <message>
        <source>Numbers of the coats</source>
        <translation>Números de las capas</translation>
    </message>
    <message>
        <source>Cost, all together</source>
        <translation>Costo, en total</translation>
    </message>
    <message>
        <source>materials + labour + other + carriage + contingency</source>
        <translation>materiales + mano de obra + otras cosas + acarreo + imprevistos</translation>
    </message>
    <message>
        <source>Materials</source>
        <translation>Materiales</translation>
    </message>
    <message>
        <source>sum of their amounts</source>
        <translation>suma de sus montos</translation>
    </message>
    <message>
        <source>sum of the amounts of labourers and masons</source>
        <translation>suma de los montos de peones y albañiles</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Otras cosas</translation>
    </message>
    <message>
        <source>sum of the amounts of own items</source>
        <translation>suma de los montos de conceptos propios</translation>
    </message>
    <message>
        <source>Carriage</source>
        <translation>Acarreo</translation>
    </message>
    <message>
        <source>sum of all trips</source>
        <translation>suma de todos los viajes</translation>
    </message>
    <message>
        <source>Contingency</source>
        <translation>Imprevistos</translation>
    </message>
    <message>
        <source>share of all before it</source>
        <translation>parte de todo lo anterior</translation>
    </message>
    <message>
        <source>Given by the household or group</source>
        <translation>Aporte de la familia o del grupo</translation>
    </message>
    <message>
        <source>sum of the shares given</source>
        <translation>suma de los aportes</translation>
    </message>
    <message>
        <source>Paid in money</source>
        <translation>Se paga en dinero</translation>
    </message>
    <message>
        <source>total − given</source>
        <translation>total − aporte</translation>
    </message>
    <message>
        <source>Cost for each m³ held</source>
        <translation>Costo por cada m³ de cabida</translation>
    </message>
    <message>
        <source>total ÷ held up to the overflow</source>
        <translation>total ÷ cabida hasta el rebosadero</translation>
    </message>
    <message>
        <source>sum of what is drawn in those months</source>
        <translation>suma de lo que se saca en esos meses</translation>
    </message>
    <message>
        <source>Dry months</source>
        <translation>Meses secos</translation>
    </message>
    <message>
        <source>mean rain below half of ET0</source>
        <translation>lluvia promedio menor que la mitad de ET0</translation>
    </message>
    <message>
        <source>Cost a year of the whole tank</source>
        <translation>Costo anual equivalente de todo el tanque</translation>
    </message>
    <message>
        <source>total × capital recovery factor + upkeep of soil-cement</source>
        <translation>total × factor de recuperación del capital + mantenimiento de suelo-cemento</translation>
    </message>
    <message>
        <source>Cost a year for each m³ drawn in dry months</source>
        <translation>Costo anual equivalente por cada m³ sacado en meses secos</translation>
    </message>
    <message>
        <source>cost a year ÷ drawn in dry months</source>
        <translation>costo anual equivalente ÷ sacado en meses secos</translation>
    </message>
    <message>
        <source>Quantity of each line</source>
        <translation>Cantidad de cada concepto</translation>
    </message>
    <message>
        <source>as entered; else: what is to be ordered, person-days of labourers and masons, lengths of pipe and fence</source>
        <translation>según lo anotado; si no: lo que hay que pedir, jornales de peones y albañiles, largos de tubo y de cerca</translation>
    </message>
    <message>
        <source>Price of each line</source>
        <translation>Precio de cada concepto</translation>
    </message>
    <message>
        <source>Amount of each line</source>
        <translation>Monto de cada concepto</translation>
    </message>
    <message>
        <source>quantity × price</source>
        <translation>cantidad × precio</translation>
    </message>
    <message>
        <source>Given, of each line</source>
        <translation>Aporte, de cada concepto</translation>
    </message>
    <message>
        <source>amount × share given</source>
        <translation>monto × parte aportada</translation>
    </message>
    <message>
        <source>Paid, of each line</source>
        <translation>Se paga, de cada concepto</translation>
    </message>
    <message>
        <source>amount − given</source>
        <translation>monto − aporte</translation>
    </message>
    <message>
        <source>Weight to carry</source>
        <translation>Peso por acarrear</translation>
    </message>
    <message>
        <source>quantity × weight of one, as entered or usual</source>
        <translation>cantidad × peso por unidad, según lo anotado o lo usual</translation>
    </message>
    <message>
        <source>Loads</source>
        <translation>Cargas</translation>
    </message>
    <message>
        <source>weight ÷ load, rounded up; bags and sacks carried whole</source>
        <translation>peso ÷ carga, redondeado hacia arriba; bolsas y costales se llevan enteros</translation>
    </message>
    <message>
        <source>Loads for one piece</source>
        <translation>Cargas por una pieza</translation>
    </message>
    <message>
        <source>weight of one ÷ load, rounded up: heavier pieces are split</source>
        <translation>peso de una ÷ carga, redondeado hacia arriba: las piezas más pesadas se parten</translation>
    </message>
    <message>
        <source>Days of one carrier</source>
        <translation>Días si lleva uno solo</translation>
    </message>
    <message>
        <source>loads ÷ trips a day</source>
        <translation>cargas ÷ viajes al día</translation>
    </message>
    <message>
        <source>Cost of the trips</source>
        <translation>Costo de los viajes</translation>
    </message>
    <message>
        <source>loads × price of a trip</source>
        <translation>cargas × precio de un viaje</translation>
    </message>
    <message>
        <source>Days on which money is needed</source>
        <translation>Días en que se necesita dinero</translation>
    </message>
    <message>
        <source>goods: start of the first task that uses them; wages: days of each task</source>
        <translation>compras: comienzo de la primera tarea que las usa; jornales: días de cada tarea</translation>
    </message>
    <message>
        <source>Money for goods by day</source>
        <translation>Dinero para compras, por día</translation>
    </message>
    <message>
        <source>cash of goods and their carriage; own items on the first day</source>
        <translation>efectivo de las compras y su acarreo; los conceptos propios, el primer día</translation>
    </message>
    <message>
        <source>Money for wages by day</source>
        <translation>Dinero para jornales, por día</translation>
    </message>
    <message>
        <source>cash of each task&apos;s person-days, spread evenly over its days</source>
        <translation>efectivo de los jornales de cada tarea, repartido parejo en sus días</translation>
    </message>
    <message>
        <source>Money so far</source>
        <translation>Dinero hasta aquí</translation>
    </message>
    <message>
        <source>sum up to and with the day, without contingency</source>
        <translation>suma hasta el día, con él incluido, sin imprevistos</translation>
    </message>
    <message>
        <source>Price of each lining alone</source>
        <translation>Precio de cada revestimiento solo</translation>
    </message>
    <message>
        <source>offer × 1, face or volume held; soil-cement without an offer: its materials, carriage and person-days × (1 + contingency)</source>
        <translation>oferta × 1, cara o cabida; suelo-cemento sin oferta: sus materiales, acarreo y jornales × (1 + imprevistos)</translation>
    </message>
    <message>
        <source>Digging and platform for it</source>
        <translation>Excavación y plataforma para él</translation>
    </message>
    <message>
        <source>person-days of topsoil, platform, pit, spoil and trimming × price of a labourer × (1 + contingency); none for a moulded tank</source>
        <translation>jornales de tierra vegetal, plataforma, excavación, tierra sacada y emparejado × precio de un peón × (1 + imprevistos); nada para un tanque moldeado</translation>
    </message>
    <message>
        <source>Capital</source>
        <translation>Capital</translation>
    </message>
    <message>
        <source>price + digging and platform</source>
        <translation>precio + excavación y plataforma</translation>
    </message>
    <message>
        <source>Life</source>
        <translation>Duración</translation>
    </message>
    <message>
        <source>Capital recovery factor</source>
        <translation>Factor de recuperación del capital</translation>
    </message>
    <message>
        <source>i (1 + i)^n ÷ ((1 + i)^n − 1); 1 ÷ n without interest</source>
        <translation>i (1 + i)^n ÷ ((1 + i)^n − 1); 1 ÷ n sin interés</translation>
    </message>
    <message>
        <source>share of the price</source>
        <translation>parte del precio</translation>
    </message>
    <message>
        <source>Cost a year</source>
        <translation>Costo anual equivalente</translation>
    </message>
    <message>
        <source>capital × factor + upkeep</source>
        <translation>capital × factor + mantenimiento</translation>
    </message>
    <message>
        <source>Cost a year for each m³ held</source>
        <translation>Costo anual equivalente por cada m³ de cabida</translation>
    </message>
    <message>
        <source>cost a year ÷ held up to the overflow</source>
        <translation>costo anual equivalente ÷ cabida hasta el rebosadero</translation>
    </message>
    <message>
        <source>Draws</source>
        <translation>Sorteos</translation>
    </message>
    <message>
        <source>With every input as it stands</source>
        <translation>Con cada dato tal como está</translation>
    </message>
    <message>
        <source>as in the plan</source>
        <translation>como en el plan</translation>
    </message>
    <message>
        <source>One draw in ten below (P10)</source>
        <translation>Uno de cada diez sorteos queda debajo (P10)</translation>
    </message>
    <message>
        <source>each input triangular between low, 0 and high about its value; draws sorted, least that a tenth does not exceed</source>
        <translation>cada dato, en triángulo entre bajo, 0 y alto alrededor de su valor; sorteos en orden, el menor que una décima parte no supera</translation>
    </message>
    <message>
        <source>Middle of the draws (P50)</source>
        <translation>Medio de los sorteos (P50)</translation>
    </message>
    <message>
        <source>draws sorted, least that half does not exceed</source>
        <translation>sorteos en orden, el menor que la mitad no supera</translation>
    </message>
    <message>
        <source>Nine draws in ten below (P90)</source>
        <translation>Nueve de cada diez sorteos quedan debajo (P90)</translation>
    </message>
    <message>
        <source>draws sorted, least that nine tenths do not exceed</source>
        <translation>sorteos en orden, el menor que nueve décimas no superan</translation>
    </message>
    <message>
        <source>Mean of the draws</source>
        <translation>Promedio de los sorteos</translation>
    </message>
    <message>
        <source>sum ÷ draws</source>
        <translation>suma ÷ sorteos</translation>
    </message>
    <message>
        <source>Least of the draws</source>
        <translation>Menor de los sorteos</translation>
    </message>
    <message>
        <source>smallest</source>
        <translation>el menor</translation>
    </message>
    <message>
        <source>Most of the draws</source>
        <translation>Mayor de los sorteos</translation>
    </message>
    <message>
        <source>largest</source>
        <translation>el mayor</translation>
    </message>
    <message>
        <source>Share of the spread that each input drives</source>
        <translation>Parte de la variación que causa cada dato</translation>
    </message>
    <message>
        <source>squared correlation ÷ sum of the squares</source>
        <translation>correlación al cuadrado ÷ suma de los cuadrados</translation>
    </message>
    <message>
        <source>Correlation with each input</source>
        <translation>Correlación con cada dato</translation>
    </message>
    <message>
        <source>Pearson&apos;s, over all draws</source>
        <translation>de Pearson, sobre todos los sorteos</translation>
    </message>
    <message>
        <source>Holds, filled to the overflow</source>
        <translation>Cabida, lleno hasta el rebosadero</translation>
    </message>
    <message>
        <source>planned like this tank</source>
        <translation>planeado como este tanque</translation>
    </message>
    <message>
        <source>Usable water</source>
        <translation>Agua útil</translation>
    </message>
    <message>
        <source>Pit to dig</source>
        <translation>Excavación por cavar</translation>
    </message>
    <message>
        <source>Clear length at the floor</source>
        <translation>Largo interior en el piso</translation>
    </message>
    <message>
        <source>as the option has it</source>
        <translation>como está en la opción</translation>
    </message>
    <message>
        <source>Clear width at the floor</source>
        <translation>Ancho interior en el piso</translation>
    </message>
    <message>
        <source>Clear depth</source>
        <translation>Profundidad interior</translation>
    </message>
    <message>
        <source>Sand to order</source>
        <translation>Arena para pedir</translation>
    </message>
    <message>
        <source>Stone to bring</source>
        <translation>Piedra para traer</translation>
    </message>
    <message>
        <source>largest need of the coats</source>
        <translation>mayor necesidad de las capas</translation>
    </message>
    <message>
        <source>earliest start of a task</source>
        <translation>comienzo más temprano de una tarea</translation>
    </message>
    <message>
        <source>latest end of a task, planting left out</source>
        <translation>fin más tardío de una tarea, sin contar la siembra</translation>
    </message>
    <message>
        <source>planned like this tank; none while prices are missing</source>
        <translation>planeado como este tanque; ninguno mientras falten precios</translation>
    </message>
    <message>
        <source>cost ÷ held up to the overflow</source>
        <translation>costo ÷ cabida hasta el rebosadero</translation>
    </message>
    <message>
        <source>same weather years</source>
        <translation>los mismos años de clima</translation>
    </message>
    <message>
        <source>Days short of water in a mean year</source>
        <translation>Días en que falta agua en un año promedio</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>contados</translation>
    </message>
    <message>
        <source>points of the line, level distance</source>
        <translation>puntos de la tubería, distancia a nivel</translation>
    </message>
    <message>
        <source>distances of the way from its first point; field line over the rim: inlet, crest, then the way</source>
        <translation>distancias del recorrido desde su primer punto; tubería al campo por encima del borde: entrada, parte alta, luego el recorrido</translation>
    </message>
    <message>
        <source>points of the line, over the finished floor</source>
        <translation>puntos de la tubería, sobre el piso terminado</translation>
    </message>
    <message>
        <source>rim + height over the rim; inlet 2 cm under the dead level, crest over the rim</source>
        <translation>borde + altura sobre el borde; entrada 2 cm bajo el nivel muerto, parte alta sobre el borde</translation>
    </message>
    <message>
        <source>losses of the fittings, K</source>
        <translation>pérdidas de los accesorios, K</translation>
    </message>
    <message>
        <source>number × K of one: screen 1 (own figure), sharp entrance 0.5, elbow 0.9, gate valve 0.15</source>
        <translation>número × K de uno: rejilla 1 (cifra propia), entrada de borde vivo 0.5, codo 0.9, válvula de compuerta 0.15</translation>
    </message>
    <message>
        <source>where the fittings sit</source>
        <translation>dónde están los accesorios</translation>
    </message>
    <message>
        <source>at the inlet; elbows of the field line half at the crest, half at the end</source>
        <translation>en la entrada; codos de la tubería al campo, mitad en la parte alta, mitad en el extremo</translation>
    </message>
    <message>
        <source>bore</source>
        <translation>diámetro interior</translation>
    </message>
    <message>
        <source>measured, else outside diameter − 2 × wall</source>
        <translation>medido; si no, diámetro exterior − 2 × pared</translation>
    </message>
    <message>
        <source>pressure class that holds</source>
        <translation>clase de presión que vale</translation>
    </message>
    <message>
        <source>class × share for warm water</source>
        <translation>clase × parte para agua caliente</translation>
    </message>
    <message>
        <source>share of the class that holds in warm water</source>
        <translation>parte de la clase que vale en agua caliente</translation>
    </message>
    <message>
        <source>1 up to 20 °C, 0.87 at 30 °C, 0.74 at 40 °C, straight between</source>
        <translation>1 hasta 20 °C, 0.87 a 30 °C, 0.74 a 40 °C, en línea recta entre ellos</translation>
    </message>
    <message>
        <source>flow wanted</source>
        <translation>caudal deseado</translation>
    </message>
    <message>
        <source>as entered; field line: outlets × usual flow of one</source>
        <translation>según lo anotado; tubería al campo: salidas × caudal usual de una</translation>
    </message>
    <message>
        <source>water over the inlet, tank full</source>
        <translation>agua sobre la entrada, tanque lleno</translation>
    </message>
    <message>
        <source>source line: inlet + water over it; field line: overflow level</source>
        <translation>tubería de la fuente: entrada + agua sobre ella; tubería al campo: nivel del rebosadero</translation>
    </message>
    <message>
        <source>water over the inlet, tank nearly empty</source>
        <translation>agua sobre la entrada, tanque casi vacío</translation>
    </message>
    <message>
        <source>source line: inlet + water over it; field line: dead level</source>
        <translation>tubería de la fuente: entrada + agua sobre ella; tubería al campo: nivel muerto</translation>
    </message>
    <message>
        <source>Field line</source>
        <translation>Tubería al campo</translation>
    </message>
    <message>
        <source>outside diameter</source>
        <translation>diámetro exterior</translation>
    </message>
    <message>
        <source>size of the table</source>
        <translation>medida de la tabla</translation>
    </message>
    <message>
        <source>least wall</source>
        <translation>pared mínima</translation>
    </message>
    <message>
        <source>bore with the least wall</source>
        <translation>diámetro interior con la pared mínima</translation>
    </message>
    <message>
        <source>outside diameter − 2 × wall</source>
        <translation>diámetro exterior − 2 × pared</translation>
    </message>
    <message>
        <source>outside diameter over wall</source>
        <translation>diámetro exterior entre pared</translation>
    </message>
    <message>
        <source>pressure class</source>
        <translation>clase de presión</translation>
    </message>
    <message>
        <source>size of the table: 20 × strength ÷ (1.25 × (SDR − 1)), rounded to a class</source>
        <translation>medida de la tabla: 20 × resistencia ÷ (1.25 × (SDR − 1)), redondeado a una clase</translation>
    </message>
    <message>
        <source>Field line, pipe</source>
        <translation>Tubería al campo, tubo</translation>
    </message>
    <message>
        <source>Field line, smallest pipe that would do</source>
        <translation>Tubería al campo, tubo más pequeño que bastaría</translation>
    </message>
    <message>
        <source>its flow</source>
        <translation>su caudal</translation>
    </message>
    <message>
        <source>like the flow of the line, where that is less</source>
        <translation>como el caudal de la tubería, donde este es menor</translation>
    </message>
    <message>
        <source>Field line, tank full</source>
        <translation>Tubería al campo, tanque lleno</translation>
    </message>
    <message>
        <source>Field line, tank nearly empty</source>
        <translation>Tubería al campo, tanque casi vacío</translation>
    </message>
    <message>
        <source>air pressure less vapour</source>
        <translation>presión del aire menos vapor</translation>
    </message>
    <message>
        <source>air pressure at that height − vapour pressure, as water column</source>
        <translation>presión del aire a esa altura − presión de vapor, como columna de agua</translation>
    </message>
    <message>
        <source>most lift</source>
        <translation>altura de succión máxima</translation>
    </message>
    <message>
        <source>air pressure less vapour − reserve of 2 m</source>
        <translation>presión del aire menos vapor − reserva de 2 m</translation>
    </message>
    <message>
        <source>lift</source>
        <translation>altura de succión</translation>
    </message>
    <message>
        <source>crest − water</source>
        <translation>parte alta − agua</translation>
    </message>
    <message>
        <source>lift left</source>
        <translation>altura de succión que sobra</translation>
    </message>
    <message>
        <source>most lift − lift − loss up to the crest</source>
        <translation>altura de succión máxima − altura de succión − pérdida hasta la parte alta</translation>
    </message>
    <message>
        <source>draws down to, at a trickle</source>
        <translation>vacía hasta, con un hilo de agua</translation>
    </message>
    <message>
        <source>highest of inlet, outlet and crest − most lift</source>
        <translation>lo más alto de entrada, salida y parte alta − altura de succión máxima</translation>
    </message>
    <message>
        <source>water that fills the pipe</source>
        <translation>agua que llena el tubo</translation>
    </message>
    <message>
        <source>π D² ÷ 4 × length</source>
        <translation>π D² ÷ 4 × largo</translation>
    </message>
    <message>
        <source>flow, valve open</source>
        <translation>caudal, válvula abierta</translation>
    </message>
    <message>
        <source>found so that water − outlet = (1 + sum of K + f L ÷ D) V² ÷ 2g</source>
        <translation>se halla de modo que agua − salida = (1 + suma de K + f L ÷ D) V² ÷ 2g</translation>
    </message>
    <message>
        <source>loss up to the crest</source>
        <translation>pérdida hasta la parte alta</translation>
    </message>
    <message>
        <source>(1 + K up to the crest + f L ÷ D) V² ÷ 2g</source>
        <translation>(1 + K hasta la parte alta + f L ÷ D) V² ÷ 2g</translation>
    </message>
    <message>
        <source>pressure at the crest</source>
        <translation>presión en la parte alta</translation>
    </message>
    <message>
        <source>− lift − loss up to the crest</source>
        <translation>− altura de succión − pérdida hasta la parte alta</translation>
    </message>
    <message>
        <source>speed that carries air down</source>
        <translation>velocidad que arrastra el aire hacia abajo</translation>
    </message>
    <message>
        <source>√(g D) × (0.825 + 0.25 √(sine of the fall))</source>
        <translation>√(g D) × (0.825 + 0.25 √(seno de la caída))</translation>
    </message>
    <message>
        <source>most flow that the crest allows</source>
        <translation>caudal máximo que permite la parte alta</translation>
    </message>
    <message>
        <source>flow whose loss up to the crest uses up the lift</source>
        <translation>caudal cuya pérdida hasta la parte alta agota la altura de succión</translation>
    </message>
    <message>
        <source>Siphon, tank full</source>
        <translation>Sifón, tanque lleno</translation>
    </message>
    <message>
        <source>Siphon, tank nearly empty</source>
        <translation>Sifón, tanque casi vacío</translation>
    </message>
    <message>
        <source>of the even slope as entered, or of the plane laid through the survey under the platform</source>
        <translation>de la ladera pareja según lo anotado, o del plano que pasa por las cotas bajo la plataforma</translation>
    </message>
    <message>
        <source>Downhill, from north by east</source>
        <translation>Ladera abajo, del norte hacia el este</translation>
    </message>
    <message>
        <source>as entered, or of that plane</source>
        <translation>según lo anotado, o de ese plano</translation>
    </message>
    <message>
        <source>outline of the pit at the ground with rim collar and walkway all round</source>
        <translation>contorno de la excavación a ras de suelo, con collar del borde y pasillo todo alrededor</translation>
    </message>
    <message>
        <source>Platform over the ground at the middle of the tank</source>
        <translation>Plataforma sobre el terreno en el centro del tanque</translation>
    </message>
    <message>
        <source>as wished: whole pit in natural ground, cut and fill balanced, or as entered</source>
        <translation>según el deseo: toda la excavación en terreno natural, corte y relleno compensados, o según lo anotado</translation>
    </message>
    <message>
        <source>Ground to be brought for the fill</source>
        <translation>Tierra por traer para el relleno</translation>
    </message>
    <message>
        <source>fill ÷ (rammed volume of 1 m³ dug) − pit − cut, where that is over 0</source>
        <translation>relleno ÷ (volumen apisonado de 1 m³ cavado) − excavación − corte, donde pasa de 0</translation>
    </message>
    <message>
        <source>Natural ground over the pit, least</source>
        <translation>Terreno natural sobre la excavación, mínimo</translation>
    </message>
    <message>
        <source>natural ground less topsoil − floor or wall of the pit, where that is least; below 0 it stands on fill</source>
        <translation>terreno natural menos tierra vegetal − fondo o pared de la excavación, donde es menor; bajo 0, está sobre relleno</translation>
    </message>
    <message>
        <source>Each way to find the level: over the ground at the middle</source>
        <translation>Cada modo de hallar el nivel: sobre el terreno en el centro</translation>
    </message>
    <message>
        <source>highest with the whole pit in natural ground; (cut × rammed volume of 1 m³) = fill; as entered</source>
        <translation>el más alto con toda la excavación en terreno natural; (corte × volumen apisonado de 1 m³) = relleno; según lo anotado</translation>
    </message>
    <message>
        <source>Each way: cut</source>
        <translation>Cada modo: corte</translation>
    </message>
    <message>
        <source>like the cut for the platform</source>
        <translation>como el corte para la plataforma</translation>
    </message>
    <message>
        <source>Each way: fill</source>
        <translation>Cada modo: relleno</translation>
    </message>
    <message>
        <source>like the fill for the platform</source>
        <translation>como el relleno para la plataforma</translation>
    </message>
    <message>
        <source>Each way: natural ground over the pit, least</source>
        <translation>Cada modo: terreno natural sobre la excavación, mínimo</translation>
    </message>
    <message>
        <source>like the cover of the pit</source>
        <translation>como el terreno sobre la excavación</translation>
    </message>
    <message>
        <source>Platform pegs: east</source>
        <translation>Estacas de la plataforma: este</translation>
    </message>
    <message>
        <source>corner of the platform, or where cut and fill come out of the ground on the line out from it</source>
        <translation>esquina de la plataforma, o donde corte y relleno salen del terreno en la línea hacia afuera de ella</translation>
    </message>
    <message>
        <source>Platform pegs: north</source>
        <translation>Estacas de la plataforma: norte</translation>
    </message>
    <message>
        <source>Platform pegs: level</source>
        <translation>Estacas de la plataforma: nivel</translation>
    </message>
    <message>
        <source>of the platform; out from it of the ground</source>
        <translation>el de la plataforma; hacia afuera de ella, el del terreno</translation>
    </message>
    <message>
        <source>Platform pegs: natural ground</source>
        <translation>Estacas de la plataforma: terreno natural</translation>
    </message>
    <message>
        <source>height of the survey&apos;s triangle, or of the slope, at the peg</source>
        <translation>altura del triángulo de las cotas, o de la ladera, en la estaca</translation>
    </message>
    <message>
        <source>Platform pegs: dig, below 0 fill</source>
        <translation>Estacas de la plataforma: cavar, bajo 0 rellenar</translation>
    </message>
    <message>
        <source>ground − finished surface</source>
        <translation>terreno − superficie terminada</translation>
    </message>
    <message>
        <source>Platform pegs: from the corner</source>
        <translation>Estacas de la plataforma: desde la esquina</translation>
    </message>
    <message>
        <source>level distance</source>
        <translation>distancia a nivel</translation>
    </message>
    <message>
        <source>Platform pegs: over the platform</source>
        <translation>Estacas de la plataforma: sobre la plataforma</translation>
    </message>
    <message>
        <source>peg − platform</source>
        <translation>estaca − plataforma</translation>
    </message>
    <message>
        <source>Heap of spoil, loose</source>
        <translation>Montón de tierra sacada, suelta</translation>
    </message>
    <message>
        <source>spoil as it lies × (1 + swell)</source>
        <translation>tierra sacada en banco × (1 + esponjamiento)</translation>
    </message>
    <message>
        <source>Height of the heap</source>
        <translation>Altura del montón</translation>
    </message>
    <message>
        <source>cone with sides at 35°, cut off level at 1.5 m where it would be higher</source>
        <translation>cono con lados a 35°, cortado a nivel a 1.5 m donde sería más alto</translation>
    </message>
    <message>
        <source>Radius of the heap&apos;s foot</source>
        <translation>Radio del pie del montón</translation>
    </message>
    <message>
        <source>cone: height ÷ tan 35°; cut off: from the volume</source>
        <translation>cono: altura ÷ tan 35°; cortado: del volumen</translation>
    </message>
    <message>
        <source>Direction of the heap, from north by east</source>
        <translation>Dirección del montón, del norte hacia el este</translation>
    </message>
    <message>
        <source>as entered; else across the fall, east on level ground</source>
        <translation>según lo anotado; si no, a través de la pendiente; al este en terreno llano</translation>
    </message>
    <message>
        <source>Foot of the heap from the pit edge</source>
        <translation>Pie del montón desde la orilla de la excavación</translation>
    </message>
    <message>
        <source>at least 0.6 m, and clear of platform, cut and fill</source>
        <translation>al menos 0.6 m, y fuera de plataforma, corte y relleno</translation>
    </message>
    <message>
        <source>Middle of the heap, east</source>
        <translation>Centro del montón, este</translation>
    </message>
    <message>
        <source>in its direction, as near as its foot may come</source>
        <translation>en su dirección, tan cerca como deja su pie</translation>
    </message>
    <message>
        <source>Middle of the heap, north</source>
        <translation>Centro del montón, norte</translation>
    </message>
    <message>
        <source>Face of the pit wall, from the level</source>
        <translation>Cara de la pared de la excavación, desde la horizontal</translation>
    </message>
    <message>
        <source>90° − arctan of the batter</source>
        <translation>90° − arctan del talud</translation>
    </message>
    <message>
        <source>Pit depth</source>
        <translation>Profundidad de la excavación</translation>
    </message>
    <message>
        <source>clear depth + all coats + stone bed</source>
        <translation>profundidad interior + todas las capas + lecho de piedra</translation>
    </message>
    <message>
        <source>Factor wanted for the cut</source>
        <translation>Factor deseado para el corte</translation>
    </message>
    <message>
        <source>fixed</source>
        <translation>fijo</translation>
    </message>
    <message>
        <source>Factor wanted for the downhill side</source>
        <translation>Factor deseado para el lado de abajo</translation>
    </message>
    <message>
        <source>Cohesion c</source>
        <translation>Cohesión c</translation>
    </message>
    <message>
        <source>table by kind of soil</source>
        <translation>tabla según el tipo de suelo</translation>
    </message>
    <message>
        <source>Friction φ</source>
        <translation>Fricción φ</translation>
    </message>
    <message>
        <source>Unit weight γ</source>
        <translation>Peso unitario γ</translation>
    </message>
    <message>
        <source>Height of a vertical cut that just stands</source>
        <translation>Altura de un corte a plomo que apenas se tiene en pie</translation>
    </message>
    <message>
        <source>4 c ÷ γ × tan(45° + φ ÷ 2)</source>
        <translation>4 c ÷ γ × tan(45° + φ ÷ 2)</translation>
    </message>
    <message>
        <source>Height at which this face just stands</source>
        <translation>Altura con que esta cara apenas se tiene en pie</translation>
    </message>
    <message>
        <source>4 c sin β cos φ ÷ (γ (1 − cos(β − φ)))</source>
        <translation>4 c sin β cos φ ÷ (γ (1 − cos(β − φ)))</translation>
    </message>
    <message>
        <source>Height of this face with the factor wanted</source>
        <translation>Altura de esta cara con el factor deseado</translation>
    </message>
    <message>
        <source>the same with c ÷ F and tan φ ÷ F</source>
        <translation>lo mismo con c ÷ F y tan φ ÷ F</translation>
    </message>
    <message>
        <source>Stability number N</source>
        <translation>Número de estabilidad N</translation>
    </message>
    <message>
        <source>table by face and friction, straight between</source>
        <translation>tabla según cara y fricción, en línea recta entre valores</translation>
    </message>
    <message>
        <source>Height of this face by it</source>
        <translation>Altura de esta cara según él</translation>
    </message>
    <message>
        <source>c ÷ (γ N)</source>
        <translation>c ÷ (γ N)</translation>
    </message>
    <message>
        <source>Factor of this cut by it</source>
        <translation>Factor de este corte según él</translation>
    </message>
    <message>
        <source>F for which c ÷ F and tan φ ÷ F just hold the pit&apos;s depth</source>
        <translation>F con el que c ÷ F y tan φ ÷ F apenas sostienen la profundidad de la excavación</translation>
    </message>
    <message>
        <source>Lowest factor of the downhill side</source>
        <translation>Factor más bajo del lado de abajo</translation>
    </message>
    <message>
        <source>Σ[(c b + (W − u b) tan φ) ÷ m] ÷ (Σ W sin α + P e ÷ R), m = cos α + sin α tan φ ÷ F; circle with the lowest of all tried, low strengths</source>
        <translation>Σ[(c b + (W − u b) tan φ) ÷ m] ÷ (Σ W sin α + P e ÷ R), m = cos α + sin α tan φ ÷ F; el círculo con el más bajo de todos los probados, resistencias bajas</translation>
    </message>
    <message>
        <source>Its circle: middle, downhill from the tank</source>
        <translation>Su círculo: centro, ladera abajo desde el tanque</translation>
    </message>
    <message>
        <source>place that the search found</source>
        <translation>lugar que halló la búsqueda</translation>
    </message>
    <message>
        <source>Its circle: middle, over the finished floor</source>
        <translation>Su círculo: centro, sobre el piso terminado</translation>
    </message>
    <message>
        <source>Its circle: radius</source>
        <translation>Su círculo: radio</translation>
    </message>
    <message>
        <source>size that the search found</source>
        <translation>tamaño que halló la búsqueda</translation>
    </message>
    <message>
        <source>Slip from, downhill from the middle of the tank</source>
        <translation>Deslizamiento desde, ladera abajo del centro del tanque</translation>
    </message>
    <message>
        <source>where the circle meets the ground above</source>
        <translation>donde el círculo encuentra el terreno arriba</translation>
    </message>
    <message>
        <source>Slip to, downhill from the middle of the tank</source>
        <translation>Deslizamiento hasta, ladera abajo del centro del tanque</translation>
    </message>
    <message>
        <source>where the circle meets the ground below</source>
        <translation>donde el círculo encuentra el terreno abajo</translation>
    </message>
    <message>
        <source>Circles tried</source>
        <translation>Círculos probados</translation>
    </message>
    <message>
        <source>a coarse grid of ends and depths, then ever smaller steps from the best</source>
        <translation>una malla gruesa de extremos y profundidades; luego, pasos cada vez más pequeños desde el mejor</translation>
    </message>
    <message>
        <source>Crack behind the slip</source>
        <translation>Grieta detrás del deslizamiento</translation>
    </message>
    <message>
        <source>as deep as the pit, no deeper than the ground falls away; the lower of the factors with and without counts</source>
        <translation>tan honda como la excavación, no más honda que lo que baja el terreno; cuenta el menor de los factores con y sin ella</translation>
    </message>
    <message>
        <source>Months with readings</source>
        <translation>Meses con mediciones</translation>
    </message>
    <message>
        <source>Readings of the month</source>
        <translation>Mediciones del mes</translation>
    </message>
    <message>
        <source>Flow, middle of the readings</source>
        <translation>Caudal, valor del medio de las mediciones</translation>
    </message>
    <message>
        <source>vessel ÷ seconds × 60; the middle one, or mean of the two middle ones</source>
        <translation>recipiente ÷ segundos × 60; el del medio, o el promedio de los dos del medio</translation>
    </message>
    <message>
        <source>Flow, smallest reading</source>
        <translation>Caudal, medición menor</translation>
    </message>
    <message>
        <source>vessel ÷ seconds × 60</source>
        <translation>recipiente ÷ segundos × 60</translation>
    </message>
    <message>
        <source>Flow, largest reading</source>
        <translation>Caudal, medición mayor</translation>
    </message>
    <message>
        <source>Spread of the readings</source>
        <translation>Variación de las mediciones</translation>
    </message>
    <message>
        <source>(largest − smallest) ÷ middle, readings far off left out</source>
        <translation>(mayor − menor) ÷ valor del medio, sin las mediciones alejadas</translation>
    </message>
    <message>
        <source>Readings far off, by number</source>
        <translation>Mediciones alejadas, por número</translation>
    </message>
    <message>
        <source>0.6745 × distance from the middle ÷ middle of those distances over 3.5; counted from 0</source>
        <translation>0.6745 × distancia al valor del medio ÷ valor del medio de esas distancias, mayor que 3.5; contadas desde 0</translation>
    </message>
    <message>
        <source>Readings too quick, by number</source>
        <translation>Mediciones demasiado rápidas, por número</translation>
    </message>
    <message>
        <source>vessel full in under 3 s; counted from 0</source>
        <translation>recipiente lleno en menos de 3 s; contadas desde 0</translation>
    </message>
    <message>
        <source>Height of the place over the sea</source>
        <translation>Altura del lugar sobre el mar</translation>
    </message>
    <message>
        <source>as entered; 0 when it is not known</source>
        <translation>según lo anotado; 0 si no se conoce</translation>
    </message>
    <message>
        <source>Rim over the finished floor</source>
        <translation>Borde sobre el piso terminado</translation>
    </message>
    <message>
        <source>Overflow over the finished floor</source>
        <translation>Rebosadero sobre el piso terminado</translation>
    </message>
    <message>
        <source>depth − freeboard</source>
        <translation>profundidad − borde libre</translation>
    </message>
    <message>
        <source>Source line fills the empty tank in</source>
        <translation>La tubería de la fuente llena el tanque vacío en</translation>
    </message>
    <message>
        <source>held up to the overflow ÷ flow with the tank full, nothing drawn</source>
        <translation>cabida hasta el rebosadero ÷ caudal con el tanque lleno, sin sacar nada</translation>
    </message>
    <message>
        <source>water that the outlet dips into, tank full</source>
        <translation>agua en que se hunde la salida, tanque lleno</translation>
    </message>
    <message>
        <source>overflow level where the end lies below it</source>
        <translation>nivel del rebosadero donde el extremo queda por debajo de él</translation>
    </message>
    <message>
        <source>water that the outlet dips into, tank nearly empty</source>
        <translation>agua en que se hunde la salida, tanque casi vacío</translation>
    </message>
    <message>
        <source>dead level where the end lies below it</source>
        <translation>nivel muerto donde el extremo queda por debajo de él</translation>
    </message>
    <message>
        <source>Source line</source>
        <translation>Tubería de la fuente</translation>
    </message>
    <message>
        <source>Source line, pipe</source>
        <translation>Tubería de la fuente, tubo</translation>
    </message>
    <message>
        <source>Source line, smallest pipe that would do</source>
        <translation>Tubería de la fuente, tubo más pequeño que bastaría</translation>
    </message>
    <message>
        <source>Source line, tank full</source>
        <translation>Tubería de la fuente, tanque lleno</translation>
    </message>
    <message>
        <source>Source line, tank nearly empty</source>
        <translation>Tubería de la fuente, tanque casi vacío</translation>
    </message>
    <message>
        <source>V(h) = A h + P b h² ÷ 2 + C b² h³ ÷ 3 less the cove, with h up to the overflow; A floor, P its edge, b batter, C corner coefficient</source>
        <translation>V(h) = A h + P b h² ÷ 2 + C b² h³ ÷ 3 menos la media caña, con h hasta el rebosadero; A piso, P su perímetro, b talud, C coeficiente de esquinas</translation>
    </message>
    <message>
        <source>Holds, filled to the rim</source>
        <translation>Cabida, lleno hasta el borde</translation>
    </message>
    <message>
        <source>V(h) as above, with h up to the rim</source>
        <translation>V(h) como arriba, con h hasta el borde</translation>
    </message>
    <message>
        <source>Cannot be drawn</source>
        <translation>No se puede sacar</translation>
    </message>
    <message>
        <source>V(h) as above, with h the dead depth</source>
        <translation>V(h) como arriba, con h la profundidad muerta</translation>
    </message>
    <message>
        <source>held up to the overflow − what cannot be drawn</source>
        <translation>cabida hasta el rebosadero − lo que no se puede sacar</translation>
    </message>
    <message>
        <source>Water surface when full</source>
        <translation>Superficie del agua con el tanque lleno</translation>
    </message>
    <message>
        <source>A + P d + C d² with d = batter × height up to the overflow</source>
        <translation>A + P d + C d² con d = talud × altura hasta el rebosadero</translation>
    </message>
    <message>
        <source>Clear floor</source>
        <translation>Piso interior</translation>
    </message>
    <message>
        <source>area of the clear floor, cove left out</source>
        <translation>área del piso interior, sin la media caña</translation>
    </message>
    <message>
        <source>Edge of the clear floor</source>
        <translation>Perímetro del piso interior</translation>
    </message>
    <message>
        <source>length all round the clear floor</source>
        <translation>largo todo alrededor del piso interior</translation>
    </message>
    <message>
        <source>Corner coefficient</source>
        <translation>Coeficiente de esquinas</translation>
    </message>
    <message>
        <source>C in: an outline moved out by d has the area A + P d + C d²; sum of cot(half the inside angle) of sharp corners; π for round ones</source>
        <translation>C en: un contorno llevado d hacia afuera tiene el área A + P d + C d²; suma de cot(mitad del ángulo interno) de las esquinas vivas; π para las redondas</translation>
    </message>
    <message>
        <source>Clear wall, along the slope</source>
        <translation>Pared interior, por la inclinación</translation>
    </message>
    <message>
        <source>√(1 + batter²) × depth × half of (edge of the floor + edge at the rim)</source>
        <translation>√(1 + talud²) × profundidad × mitad de (perímetro del piso + perímetro en el borde)</translation>
    </message>
    <message>
        <source>Length round the clear top</source>
        <translation>Largo alrededor del borde interior</translation>
    </message>
    <message>
        <source>edge of the floor + 2 C × batter × depth</source>
        <translation>perímetro del piso + 2 C × talud × profundidad</translation>
    </message>
    <message>
        <source>Clear opening at the rim</source>
        <translation>Boca interior en el borde</translation>
    </message>
    <message>
        <source>A + P d + C d² with d = batter × depth</source>
        <translation>A + P d + C d² con d = talud × profundidad</translation>
    </message>
    <message>
        <source>as entered at the floor; entered at the rim: less 2 × batter × depth</source>
        <translation>según lo anotado en el piso; si se anotó en el borde: menos 2 × talud × profundidad</translation>
    </message>
    <message>
        <source>Clear length at the rim</source>
        <translation>Largo interior en el borde</translation>
    </message>
    <message>
        <source>length at the floor + 2 × batter × depth</source>
        <translation>largo en el piso + 2 × talud × profundidad</translation>
    </message>
    <message>
        <source>Clear width at the rim</source>
        <translation>Ancho interior en el borde</translation>
    </message>
    <message>
        <source>width at the floor + 2 × batter × depth</source>
        <translation>ancho en el piso + 2 × talud × profundidad</translation>
    </message>
    <message>
        <source>finished floor to rim, as entered</source>
        <translation>del piso terminado al borde, según lo anotado</translation>
    </message>
    <message>
        <source>Overflow over the floor</source>
        <translation>Rebosadero sobre el piso</translation>
    </message>
    <message>
        <source>Marks of the dip-stick</source>
        <translation>Marcas de la vara para medir el agua</translation>
    </message>
    <message>
        <source>every 5 cm from the finished floor, the overflow and the rim</source>
        <translation>cada 5 cm desde el piso terminado, el rebosadero y el borde</translation>
    </message>
    <message>
        <source>Held at each mark</source>
        <translation>Agua guardada en cada marca</translation>
    </message>
    <message>
        <source>V(h) as above, with h the mark</source>
        <translation>V(h) como arriba, con h la marca</translation>
    </message>
    <message>
        <source>outline grown by all coats square to their faces, from the pit floor to the ground, same formula as for the tank; with the ledge of the rim collar</source>
        <translation>contorno agrandado por todas las capas a escuadra con sus caras, del fondo de la excavación al suelo, misma fórmula que para el tanque; con el escalón del collar del borde</translation>
    </message>
    <message>
        <source>Pit length at the ground</source>
        <translation>Largo de la excavación a ras de suelo</translation>
    </message>
    <message>
        <source>clear length at the rim + 2 × all coats × √(1 + batter²)</source>
        <translation>largo interior en el borde + 2 × todas las capas × √(1 + talud²)</translation>
    </message>
    <message>
        <source>Pit width at the ground</source>
        <translation>Ancho de la excavación a ras de suelo</translation>
    </message>
    <message>
        <source>clear width at the rim + 2 × all coats × √(1 + batter²)</source>
        <translation>ancho interior en el borde + 2 × todas las capas × √(1 + talud²)</translation>
    </message>
    <message>
        <source>Pit length at its floor</source>
        <translation>Largo de la excavación en su fondo</translation>
    </message>
    <message>
        <source>length at the ground − 2 × batter × pit depth</source>
        <translation>largo a ras de suelo − 2 × talud × profundidad de la excavación</translation>
    </message>
    <message>
        <source>Pit width at its floor</source>
        <translation>Ancho de la excavación en su fondo</translation>
    </message>
    <message>
        <source>width at the ground − 2 × batter × pit depth</source>
        <translation>ancho a ras de suelo − 2 × talud × profundidad de la excavación</translation>
    </message>
    <message>
        <source>Cut for the platform, as it lies</source>
        <translation>Corte para la plataforma, en banco</translation>
    </message>
    <message>
        <source>ground above platform and cut faces, every triangle of the survey cut along their edges; even slope in closed form</source>
        <translation>terreno sobre la plataforma y las caras del corte, cada triángulo de las cotas cortado por sus bordes; ladera pareja con fórmula cerrada</translation>
    </message>
    <message>
        <source>Fill for the platform, as rammed</source>
        <translation>Relleno para la plataforma, apisonado</translation>
    </message>
    <message>
        <source>room between the ground and platform and fill faces, reckoned like the cut</source>
        <translation>espacio entre el terreno y la plataforma y las caras del relleno, calculado como el corte</translation>
    </message>
    <message>
        <source>Topsoil stripped first</source>
        <translation>Tierra vegetal que se retira primero</translation>
    </message>
    <message>
        <source>all ground that is disturbed × depth of topsoil, on the cut face no deeper than the face</source>
        <translation>todo el terreno removido × espesor de la tierra vegetal; en la cara del corte, no más hondo que la cara</translation>
    </message>
    <message>
        <source>Spoil left over, as it lies</source>
        <translation>Tierra sacada que sobra, en banco</translation>
    </message>
    <message>
        <source>pit + cut − fill ÷ (rammed volume of 1 m³ dug); not below 0</source>
        <translation>excavación + corte − relleno ÷ (volumen apisonado de 1 m³ cavado); no menos de 0</translation>
    </message>
    <message>
        <source>Swell of the soil</source>
        <translation>Esponjamiento del suelo</translation>
    </message>
    <message>
        <source>by kind of soil: clay and wet ground 40 %, loam and fill 25 %, sand 12 %, rock 65 %</source>
        <translation>según el tipo de suelo: arcilla y terreno mojado 40 %, tierra franca y relleno 25 %, arena 12 %, roca 65 %</translation>
    </message>
    <message>
        <source>Spoil, loose</source>
        <translation>Tierra sacada, suelta</translation>
    </message>
    <message>
        <source>Pegs: along the first side</source>
        <translation>Estacas: a lo largo del primer lado</translation>
    </message>
    <message>
        <source>corners of the pit at the ground and at its floor, offset pegs 1 m clear of edge and rim collar, 3-4-5 marks; from the first corner, or from the centre</source>
        <translation>esquinas de la excavación a ras de suelo y en su fondo, estacas apartadas a 1 m de orilla y collar del borde, marcas 3-4-5; desde la primera esquina, o desde el centro</translation>
    </message>
    <message>
        <source>Pegs: square to the first side</source>
        <translation>Estacas: a escuadra con el primer lado</translation>
    </message>
    <message>
        <source>as along the first side</source>
        <translation>como a lo largo del primer lado</translation>
    </message>
    <message>
        <source>Pegs: over the ground</source>
        <translation>Estacas: sobre el suelo</translation>
    </message>
    <message>
        <source>0 at the ground, − pit depth at the pit floor</source>
        <translation>0 a ras de suelo, − profundidad de la excavación en el fondo de la excavación</translation>
    </message>
    <message>
        <source>Lengths to check with the tape</source>
        <translation>Largos por revisar con la cinta</translation>
    </message>
    <message>
        <source>level distance between two pegs: √(Δx² + Δy²)</source>
        <translation>distancia a nivel entre dos estacas: √(Δx² + Δy²)</translation>
    </message>
    <message>
        <source>Marks of the depth rod, below the ground</source>
        <translation>Marcas de la vara de profundidad, bajo el suelo</translation>
    </message>
    <message>
        <source>pit depth less the layers up to the mark; the overflow: the freeboard</source>
        <translation>profundidad de la excavación menos las capas hasta la marca; el rebosadero: el borde libre</translation>
    </message>
    <message>
        <source>Depths at which the pit wall is checked</source>
        <translation>Profundidades en que se revisa la pared de la excavación</translation>
    </message>
    <message>
        <source>every 0.5 m, and the pit floor</source>
        <translation>cada 0.5 m, y el fondo de la excavación</translation>
    </message>
    <message>
        <source>Pit wall in from its edge there</source>
        <translation>Pared de la excavación, hacia adentro desde su orilla</translation>
    </message>
    <message>
        <source>batter × depth below the ground</source>
        <translation>talud × profundidad bajo el suelo</translation>
    </message>
    <message>
        <source>Weather years</source>
        <translation>Años de clima</translation>
    </message>
    <message>
        <source>made from the monthly means (as many as entered), or the whole years of the daily record</source>
        <translation>generados de los promedios mensuales (tantos como se anotaron), o los años completos del registro diario</translation>
    </message>
    <message>
        <source>Years with water all year</source>
        <translation>Años con agua todo el año</translation>
    </message>
    <message>
        <source>years without a day on which less than 99.9 % of the need could be drawn</source>
        <translation>años sin ningún día en que se pudo sacar menos del 99.9 % de la necesidad</translation>
    </message>
    <message>
        <source>10 × years with water all year ÷ years</source>
        <translation>10 × años con agua todo el año ÷ años</translation>
    </message>
    <message>
        <source>Days on which the need was met</source>
        <translation>Días en que se cubrió la necesidad</translation>
    </message>
    <message>
        <source>100 × (1 − days short of water ÷ days with a need)</source>
        <translation>100 × (1 − días en que falta agua ÷ días con necesidad)</translation>
    </message>
    <message>
        <source>Share of the need that was met</source>
        <translation>Parte de la necesidad que se cubrió</translation>
    </message>
    <message>
        <source>100 × drawn ÷ needed</source>
        <translation>100 × sacado ÷ necesitado</translation>
    </message>
    <message>
        <source>sum over the years ÷ years</source>
        <translation>suma de los años ÷ años</translation>
    </message>
    <message>
        <source>Days short of water in the worst year</source>
        <translation>Días en que falta agua en el peor año</translation>
    </message>
    <message>
        <source>largest of the years</source>
        <translation>el mayor de los años</translation>
    </message>
    <message>
        <source>Lacking in a mean year</source>
        <translation>Falta en un año promedio</translation>
    </message>
    <message>
        <source>need that could not be drawn, mean of the years</source>
        <translation>necesidad que no se pudo sacar, promedio de los años</translation>
    </message>
    <message>
        <source>Lacking in the worst year</source>
        <translation>Falta en el peor año</translation>
    </message>
    <message>
        <source>Run over in a mean year</source>
        <translation>Rebosa en un año promedio</translation>
    </message>
    <message>
        <source>mean of the years</source>
        <translation>promedio de los años</translation>
    </message>
    <message>
        <source>Largest need of a day</source>
        <translation>Mayor necesidad de un día</translation>
    </message>
    <message>
        <source>beds + animals + people, largest day of each year, mean of the years</source>
        <translation>camas + animales + personas, el mayor día de cada año, promedio de los años</translation>
    </message>
    <message>
        <source>Beds together</source>
        <translation>Camas, en total</translation>
    </message>
    <message>
        <source>Smallest tank that meets the target</source>
        <translation>Tanque más pequeño que cumple la meta</translation>
    </message>
    <message>
        <source>plan made larger or smaller at the same depth and batter, every size run through all years; least that meets the target</source>
        <translation>plan agrandado o achicado con igual profundidad y talud, cada tamaño probado con todos los años; el menor que cumple la meta</translation>
    </message>
    <message>
        <source>Largest tank tried</source>
        <translation>Tanque más grande probado</translation>
    </message>
    <message>
        <source>200 m³, or reach of the curve where that is more</source>
        <translation>200 m³, o el alcance de la curva donde es más</translation>
    </message>
    <message>
        <source>Largest beds that meet the target</source>
        <translation>Camas máximas que cumplen la meta</translation>
    </message>
    <message>
        <source>all beds grown alike, every area run through all years; largest up to which the target is met</source>
        <translation>todas las camas agrandadas por igual, cada área probada con todos los años; la mayor hasta la que se cumple la meta</translation>
    </message>
    <message>
        <source>Largest beds tried</source>
        <translation>Camas máximas probadas</translation>
    </message>
    <message>
        <source>10 × the beds</source>
        <translation>10 × las camas</translation>
    </message>
    <message>
        <source>Error of the water balance</source>
        <translation>Error del balance de agua</translation>
    </message>
    <message>
        <source>(start + supply + rain − evaporation − seepage − drawn − spill − end) ÷ (start + supply + rain)</source>
        <translation>(comienzo + entradas + lluvia − evaporación − filtración − sacado − rebosa − fin) ÷ (comienzo + entradas + lluvia)</translation>
    </message>
    <message>
        <source>Weather year begins with month</source>
        <translation>El año de clima empieza con el mes</translation>
    </message>
    <message>
        <source>month with most rain, so that no dry season is cut in two</source>
        <translation>mes con más lluvia, para que ninguna época seca quede partida en dos</translation>
    </message>
    <message>
        <source>Rain in a mean year</source>
        <translation>Lluvia en un año promedio</translation>
    </message>
    <message>
        <source>sum of all days ÷ years</source>
        <translation>suma de todos los días ÷ años</translation>
    </message>
    <message>
        <source>Spread of the yearly rain</source>
        <translation>Variación de la lluvia anual</translation>
    </message>
    <message>
        <source>standard deviation ÷ mean of the weather years</source>
        <translation>desviación estándar ÷ promedio de los años de clima</translation>
    </message>
    <message>
        <source>ET0 of a mean year, Penman-Monteith</source>
        <translation>ET0 de un año promedio, Penman-Monteith</translation>
    </message>
    <message>
        <source>(0.408 Δ (Rn − G) + γ 900 ÷ (T + 273) u (es − ea)) ÷ (Δ + γ (1 + 0.34 u)) each day, eq. 6; what was not measured estimated by eq. 48 and 50, wind 2 m/s</source>
        <translation>(0.408 Δ (Rn − G) + γ 900 ÷ (T + 273) u (es − ea)) ÷ (Δ + γ (1 + 0.34 u)) cada día, ec. 6; lo que no se midió, estimado con ec. 48 y 50, viento 2 m/s</translation>
    </message>
    <message>
        <source>ET0 of a mean year, Hargreaves</source>
        <translation>ET0 de un año promedio, Hargreaves</translation>
    </message>
    <message>
        <source>0.0023 (T + 17.8) √(Tmax − Tmin) Ra each day, eq. 52, Ra in mm</source>
        <translation>0.0023 (T + 17.8) √(Tmax − Tmin) Ra cada día, ec. 52, Ra en mm</translation>
    </message>
    <message>
        <source>Years left out of the record</source>
        <translation>Años dejados fuera del registro</translation>
    </message>
    <message>
        <source>years with gaps, when gaps are left out</source>
        <translation>años con vacíos, cuando los vacíos se dejan fuera</translation>
    </message>
    <message>
        <source>Values put in for gaps</source>
        <translation>Valores puestos en los vacíos</translation>
    </message>
    <message>
        <source>taken from the nearest year</source>
        <translation>tomados del año más cercano</translation>
    </message>
    <message>
        <source>Days outside whole years</source>
        <translation>Días fuera de años completos</translation>
    </message>
    <message>
        <source>days of the record before the first and after the last whole year</source>
        <translation>días del registro antes del primer año completo y después del último</translation>
    </message>
    <message>
        <source>Months</source>
        <translation>Meses</translation>
    </message>
    <message>
        <source>January first</source>
        <translation>enero primero</translation>
    </message>
    <message>
        <source>A full tank lasts, from the first of the month, days</source>
        <translation>Lo que dura un tanque lleno, desde el primero del mes, días</translation>
    </message>
    <message>
        <source>nothing flows in, no rain on it; days to the first day short of water, middle of all years</source>
        <translation>no entra nada, no le llueve; días hasta el primero en que falta agua, valor del medio de todos los años</translation>
    </message>
    <message>
        <source>An empty tank fills, from the first of the month, days</source>
        <translation>Lo que tarda en llenarse un tanque vacío, desde el primero del mes, días</translation>
    </message>
    <message>
        <source>nothing drawn; days until full, middle of all years</source>
        <translation>no se saca nada; días hasta que se llena, valor del medio de todos los años</translation>
    </message>
    <message>
        <source>Area of each bed</source>
        <translation>Área de cada cama</translation>
    </message>
    <message>
        <source>Planted</source>
        <translation>Siembra</translation>
    </message>
    <message>
        <source>Season ends</source>
        <translation>Fin de la temporada</translation>
    </message>
    <message>
        <source>planted + lengths of the four stages − 1 day</source>
        <translation>siembra + duración de las cuatro etapas − 1 día</translation>
    </message>
    <message>
        <source>Days of the season</source>
        <translation>Días de la temporada</translation>
    </message>
    <message>
        <source>sum of the four stages of the crop</source>
        <translation>suma de las cuatro etapas del cultivo</translation>
    </message>
    <message>
        <source>Share that reaches the roots</source>
        <translation>Parte que llega a las raíces</translation>
    </message>
    <message>
        <source>as entered, else usual for the method</source>
        <translation>según lo anotado; si no, lo usual para la forma de riego</translation>
    </message>
    <message>
        <source>Use of the crop in a season</source>
        <translation>Uso del cultivo en una temporada</translation>
    </message>
    <message>
        <source>sum of Kc × ET0, Kc from stage to stage by eq. 66, adjusted to wind and humidity by eq. 62 and 65; mean of the years</source>
        <translation>suma de Kc × ET0, Kc de etapa en etapa con ec. 66, ajustado al viento y la humedad con ec. 62 y 65; promedio de los años</translation>
    </message>
    <message>
        <source>What rain does not bring</source>
        <translation>Lo que la lluvia no trae</translation>
    </message>
    <message>
        <source>root zone as a bucket: dried by the use, wetted by rain; brought back each day to what the crop bears: p × soil water × root depth (eq. 82 to 85)</source>
        <translation>zona de raíces como un balde: la seca el uso, la moja la lluvia; cada día se repone hasta lo que el cultivo aguanta: p × agua del suelo × profundidad de raíces (ec. 82 a 85)</translation>
    </message>
    <message>
        <source>To be drawn for each bed in a year</source>
        <translation>Agua por sacar para cada cama en un año</translation>
    </message>
    <message>
        <source>net × area ÷ share that reaches the roots</source>
        <translation>neto × área ÷ parte que llega a las raíces</translation>
    </message>
    <message>
        <source>Largest need of a day for each bed</source>
        <translation>Mayor necesidad de un día para cada cama</translation>
    </message>
    <message>
        <source>largest day of each year, mean of the years</source>
        <translation>el mayor día de cada año, promedio de los años</translation>
    </message>
    <message>
        <source>Days short of water, year by year</source>
        <translation>Días en que falta agua, año por año</translation>
    </message>
    <message>
        <source>days on which less than 99.9 % of the need could be drawn</source>
        <translation>días en que se pudo sacar menos del 99.9 % de la necesidad</translation>
    </message>
    <message>
        <source>Lacking, year by year</source>
        <translation>Falta, año por año</translation>
    </message>
    <message>
        <source>need − drawn</source>
        <translation>necesidad − sacado</translation>
    </message>
    <message>
        <source>Run over, year by year</source>
        <translation>Rebosa, año por año</translation>
    </message>
    <message>
        <source>what is above full at the end of a day</source>
        <translation>lo que pasa de lleno al final de un día</translation>
    </message>
    <message>
        <source>Days of the year</source>
        <translation>Días del año</translation>
    </message>
    <message>
        <source>from the first day of the weather year, 29 February left out</source>
        <translation>desde el primer día del año de clima, sin el 29 de febrero</translation>
    </message>
    <message>
        <source>Held by day: least of all years</source>
        <translation>Agua guardada por día: mínimo de todos los años</translation>
    </message>
    <message>
        <source>daily balance of all years, sorted</source>
        <translation>balance diario de todos los años, en orden</translation>
    </message>
    <message>
        <source>Held by day: one year in ten below</source>
        <translation>Agua guardada por día: un año de cada diez queda debajo</translation>
    </message>
    <message>
        <source>straight between neighbours of the sorted years</source>
        <translation>en línea recta entre vecinos de los años en orden</translation>
    </message>
    <message>
        <source>Held by day: middle of all years</source>
        <translation>Agua guardada por día: valor del medio de todos los años</translation>
    </message>
    <message>
        <source>Held by day: nine years in ten below</source>
        <translation>Agua guardada por día: nueve años de cada diez quedan debajo</translation>
    </message>
    <message>
        <source>Held by day: most of all years</source>
        <translation>Agua guardada por día: máximo de todos los años</translation>
    </message>
    <message>
        <source>Sizes tried</source>
        <translation>Tamaños probados</translation>
    </message>
    <message>
        <source>even steps at the same depth and batter</source>
        <translation>pasos iguales con la misma profundidad y talud</translation>
    </message>
    <message>
        <source>Years in ten with water all year, by size</source>
        <translation>Años de cada diez con agua todo el año, por tamaño</translation>
    </message>
    <message>
        <source>every size run through all years</source>
        <translation>cada tamaño probado con todos los años</translation>
    </message>
    <message>
        <source>Map: sizes</source>
        <translation>Mapa: tamaños</translation>
    </message>
    <message>
        <source>even steps, up to about 2.5 times this tank; see the map itself</source>
        <translation>pasos iguales, hasta cerca de 2.5 veces este tanque; vea el mapa mismo</translation>
    </message>
    <message>
        <source>Map: beds</source>
        <translation>Mapa: camas</translation>
    </message>
    <message>
        <source>even steps, up to about 2.5 times these beds; see the map itself</source>
        <translation>pasos iguales, hasta cerca de 2.5 veces estas camas; vea el mapa mismo</translation>
    </message>
    <message>
        <source>Map: years in ten with water all year</source>
        <translation>Mapa: años de cada diez con agua todo el año</translation>
    </message>
    <message>
        <source>each size with each area run through all years; see the map itself</source>
        <translation>cada tamaño con cada área, probado con todos los años; vea el mapa mismo</translation>
    </message>
    <message>
        <source>tap or spring</source>
        <translation>llave o manantial</translation>
    </message>
    <message>
        <source>flow × hours a day × 60</source>
        <translation>caudal × horas al día × 60</translation>
    </message>
    <message>
        <source>runoff of the roof</source>
        <translation>escorrentía del techo</translation>
    </message>
    <message>
        <source>rain × area × share that runs off, less the first flush of a wet spell</source>
        <translation>lluvia × área × parte que escurre, menos las primeras aguas de una racha de días lluviosos</translation>
    </message>
    <message>
        <source>runoff of the ground</source>
        <translation>escorrentía del terreno</translation>
    </message>
    <message>
        <source>rain on the tank</source>
        <translation>lluvia sobre el tanque</translation>
    </message>
    <message>
        <source>rain × opening at the rim</source>
        <translation>lluvia × boca en el borde</translation>
    </message>
    <message>
        <source>evaporation</source>
        <translation>evaporación</translation>
    </message>
    <message>
        <source>ET0 × open water × (1 − cover) × water surface of the day</source>
        <translation>ET0 × agua libre × (1 − cubierta) × superficie del agua del día</translation>
    </message>
    <message>
        <source>seepage</source>
        <translation>filtración</translation>
    </message>
    <message>
        <source>seepage a day × wet face of the day</source>
        <translation>filtración al día × cara mojada del día</translation>
    </message>
    <message>
        <source>run over</source>
        <translation>rebosa</translation>
    </message>
    <message>
        <source>need of the beds</source>
        <translation>necesidad de las camas</translation>
    </message>
    <message>
        <source>net need × area ÷ share that reaches the roots</source>
        <translation>riego neto × área ÷ parte que llega a las raíces</translation>
    </message>
    <message>
        <source>need of the animals</source>
        <translation>necesidad de los animales</translation>
    </message>
    <message>
        <source>head × litres a day, as entered or usual for the kind</source>
        <translation>cabezas × litros al día, según lo anotado o lo usual para el tipo</translation>
    </message>
    <message>
        <source>need of people</source>
        <translation>necesidad de las personas</translation>
    </message>
    <message>
        <source>people × litres a day</source>
        <translation>personas × litros al día</translation>
    </message>
    <message>
        <source>drawn</source>
        <translation>sacado</translation>
    </message>
    <message>
        <source>need, no more than what is held over the dead depth</source>
        <translation>necesidad, no más de lo que hay guardado sobre la profundidad muerta</translation>
    </message>
    <message>
        <source>lacking</source>
        <translation>falta</translation>
    </message>
    <message>
        <source>days short of water</source>
        <translation>días en que falta agua</translation>
    </message>
    <message>
        <source>days on which less than 99.9 % of the need could be drawn, mean of the years</source>
        <translation>días en que se pudo sacar menos del 99.9 % de la necesidad, promedio de los años</translation>
    </message>
    <message>
        <source>Mean year</source>
        <translation>Año promedio</translation>
    </message>
    <message>
        <source>By month</source>
        <translation>Por mes</translation>
    </message>
    <message>
        <source>plain sums and products of numbers of the plan</source>
        <translation>simples sumas y productos de números del plan</translation>
    </message>
    <message>
        <source>Jars that count, by their rows</source>
        <translation>Frascos que cuentan, por su fila</translation>
    </message>
    <message>
        <source>a jar without layers is left out</source>
        <translation>un frasco sin capas no cuenta</translation>
    </message>
    <message>
        <source>Sand in each jar</source>
        <translation>Arena en cada frasco</translation>
    </message>
    <message>
        <source>layer of sand ÷ all layers: share of the settled volume</source>
        <translation>capa de arena ÷ todas las capas: parte del volumen asentado</translation>
    </message>
    <message>
        <source>Silt in each jar</source>
        <translation>Limo en cada frasco</translation>
    </message>
    <message>
        <source>layer of silt ÷ all layers</source>
        <translation>capa de limo ÷ todas las capas</translation>
    </message>
    <message>
        <source>Clay in each jar</source>
        <translation>Arcilla en cada frasco</translation>
    </message>
    <message>
        <source>layer of clay ÷ all layers; by weight it is less, for clay settles loosely</source>
        <translation>capa de arcilla ÷ todas las capas; en peso es menos, porque la arcilla se asienta suelta</translation>
    </message>
    <message>
        <source>Clay in the soil, by the jars</source>
        <translation>Arcilla en el suelo, según los frascos</translation>
    </message>
    <message>
        <source>middle of the jars</source>
        <translation>valor del medio de los frascos</translation>
    </message>
    <message>
        <source>Balls that count, by their rows</source>
        <translation>Bolas que cuentan, por su fila</translation>
    </message>
    <message>
        <source>a ball that was not tried is left out</source>
        <translation>una bola que no se probó no cuenta</translation>
    </message>
    <message>
        <source>Layers of the test pits</source>
        <translation>Capas de suelo de las calicatas</translation>
    </message>
    <message>
        <source>those that begin above the floor of the tank&apos;s pit</source>
        <translation>las que empiezan sobre el fondo de la excavación del tanque</translation>
    </message>
    <message>
        <source>Of them with unknown soil</source>
        <translation>De ellas, con suelo no conocido</translation>
    </message>
    <message>
        <source>Deepest test pit</source>
        <translation>Calicata más honda</translation>
    </message>
    <message>
        <source>deepest end of a layer</source>
        <translation>extremo más hondo de una capa</translation>
    </message>
    <message>
        <source>Water met in the test pits at</source>
        <translation>Agua hallada en las calicatas a</translation>
    </message>
    <message>
        <source>least depth of a layer in which water came</source>
        <translation>menor hondura de una capa en que entró agua</translation>
    </message>
    <message>
        <source>Settings of the water level that count, by their rows</source>
        <translation>Tramos del nivel de agua que cuentan, por su fila</translation>
    </message>
    <message>
        <source>a setting without run is left out</source>
        <translation>un tramo sin distancia no cuenta</translation>
    </message>
    <message>
        <source>Fall of each setting</source>
        <translation>Pendiente de cada tramo</translation>
    </message>
    <message>
        <source>drop ÷ run</source>
        <translation>desnivel ÷ distancia</translation>
    </message>
    <message>
        <source>Run, all settings</source>
        <translation>Distancia, todos los tramos</translation>
    </message>
    <message>
        <source>sum</source>
        <translation>suma</translation>
    </message>
    <message>
        <source>Drop, all settings</source>
        <translation>Desnivel, todos los tramos</translation>
    </message>
    <message>
        <source>Fall of the ground, by the water level</source>
        <translation>Pendiente del terreno, por el nivel de agua</translation>
    </message>
    <message>
        <source>all drops ÷ all runs; below 0 where it was walked uphill</source>
        <translation>todos los desniveles ÷ todas las distancias; menos de 0 donde se midió cuesta arriba</translation>
    </message>
</context>
</TS>
