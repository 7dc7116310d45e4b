using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace PatternStudio.Studio.Data.Migrations.Postgres
{
    /// <inheritdoc />
    public partial class Stash : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "Care",
                table: "Yarns",
                type: "character varying(300)",
                maxLength: 300,
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<string>(
                name: "Currency",
                table: "Yarns",
                type: "character varying(3)",
                maxLength: 3,
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<decimal>(
                name: "Price",
                table: "Yarns",
                type: "numeric(12,2)",
                precision: 12,
                scale: 2,
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "RowVersion",
                table: "Yarns",
                type: "integer",
                nullable: false,
                defaultValue: 0);

            migrationBuilder.AddColumn<string>(
                name: "Counted",
                table: "Swatches",
                type: "character varying(20)",
                maxLength: 20,
                nullable: false,
                defaultValue: "Stitches");

            migrationBuilder.AddColumn<int>(
                name: "FromRow",
                table: "Swatches",
                type: "integer",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "HeightBeforeMetres",
                table: "Swatches",
                type: "double precision",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "Minutes",
                table: "Swatches",
                type: "double precision",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Pattern",
                table: "Swatches",
                type: "character varying(80)",
                maxLength: 80,
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<Guid>(
                name: "PhotoId",
                table: "Swatches",
                type: "uuid",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "RowVersion",
                table: "Swatches",
                type: "integer",
                nullable: false,
                defaultValue: 0);

            migrationBuilder.AddColumn<double>(
                name: "StitchesEach",
                table: "Swatches",
                type: "double precision",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "ToRow",
                table: "Swatches",
                type: "integer",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "WidthBeforeMetres",
                table: "Swatches",
                type: "double precision",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "Photos",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    StudioId = table.Column<Guid>(type: "uuid", nullable: false),
                    Picture = table.Column<byte[]>(type: "bytea", nullable: false),
                    Small = table.Column<byte[]>(type: "bytea", nullable: false),
                    Added = table.Column<DateTime>(type: "timestamp with time zone", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Photos", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Photos_Studios_StudioId",
                        column: x => x.StudioId,
                        principalTable: "Studios",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "StashLots",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    StudioId = table.Column<Guid>(type: "uuid", nullable: false),
                    YarnId = table.Column<Guid>(type: "uuid", nullable: false),
                    Balls = table.Column<int>(type: "integer", nullable: false),
                    OpenedKilograms = table.Column<double>(type: "double precision", nullable: true),
                    DyeLot = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    Place = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    Note = table.Column<string>(type: "character varying(500)", maxLength: 500, nullable: false),
                    RowVersion = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_StashLots", x => x.Id);
                    table.ForeignKey(
                        name: "FK_StashLots_Studios_StudioId",
                        column: x => x.StudioId,
                        principalTable: "Studios",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_StashLots_Yarns_YarnId",
                        column: x => x.YarnId,
                        principalTable: "Yarns",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Reservations",
                columns: table => new
                {
                    DesignId = table.Column<Guid>(type: "uuid", nullable: false),
                    LotId = table.Column<Guid>(type: "uuid", nullable: false),
                    Kilograms = table.Column<double>(type: "double precision", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Reservations", x => new { x.DesignId, x.LotId });
                    table.ForeignKey(
                        name: "FK_Reservations_Designs_DesignId",
                        column: x => x.DesignId,
                        principalTable: "Designs",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Reservations_StashLots_LotId",
                        column: x => x.LotId,
                        principalTable: "StashLots",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "IX_Swatches_PhotoId",
                table: "Swatches",
                column: "PhotoId");

            migrationBuilder.CreateIndex(
                name: "IX_Photos_StudioId",
                table: "Photos",
                column: "StudioId");

            migrationBuilder.CreateIndex(
                name: "IX_Reservations_LotId",
                table: "Reservations",
                column: "LotId");

            migrationBuilder.CreateIndex(
                name: "IX_StashLots_StudioId",
                table: "StashLots",
                column: "StudioId");

            migrationBuilder.CreateIndex(
                name: "IX_StashLots_YarnId",
                table: "StashLots",
                column: "YarnId");

            migrationBuilder.AddForeignKey(
                name: "FK_Swatches_Photos_PhotoId",
                table: "Swatches",
                column: "PhotoId",
                principalTable: "Photos",
                principalColumn: "Id",
                onDelete: ReferentialAction.Restrict);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropForeignKey(
                name: "FK_Swatches_Photos_PhotoId",
                table: "Swatches");

            migrationBuilder.DropTable(
                name: "Photos");

            migrationBuilder.DropTable(
                name: "Reservations");

            migrationBuilder.DropTable(
                name: "StashLots");

            migrationBuilder.DropIndex(
                name: "IX_Swatches_PhotoId",
                table: "Swatches");

            migrationBuilder.DropColumn(
                name: "Care",
                table: "Yarns");

            migrationBuilder.DropColumn(
                name: "Currency",
                table: "Yarns");

            migrationBuilder.DropColumn(
                name: "Price",
                table: "Yarns");

            migrationBuilder.DropColumn(
                name: "RowVersion",
                table: "Yarns");

            migrationBuilder.DropColumn(
                name: "Counted",
                table: "Swatches");

            migrationBuilder.DropColumn(
                name: "FromRow",
                table: "Swatches");

            migrationBuilder.DropColumn(
                name: "HeightBeforeMetres",
                table: "Swatches");

            migrationBuilder.DropColumn(
                name: "Minutes",
                table: "Swatches");

            migrationBuilder.DropColumn(
                name: "Pattern",
                table: "Swatches");

            migrationBuilder.DropColumn(
                name: "PhotoId",
                table: "Swatches");

            migrationBuilder.DropColumn(
                name: "RowVersion",
                table: "Swatches");

            migrationBuilder.DropColumn(
                name: "StitchesEach",
                table: "Swatches");

            migrationBuilder.DropColumn(
                name: "ToRow",
                table: "Swatches");

            migrationBuilder.DropColumn(
                name: "WidthBeforeMetres",
                table: "Swatches");
        }
    }
}
