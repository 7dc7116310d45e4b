using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace PatternStudio.Studio.Data.Migrations.Postgres
{
    /// <inheritdoc />
    public partial class RoundGaps : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "ShownVersions",
                table: "TestRounds",
                type: "character varying(2000)",
                maxLength: 2000,
                nullable: false,
                defaultValue: "");

            migrationBuilder.Sql(
                """
                UPDATE "TestRounds" SET "ShownVersions" = CASE WHEN "VersionBefore" IS NULL THEN CAST("Version" AS TEXT) ELSE CAST("VersionBefore" AS TEXT) || ',' || CAST("Version" AS TEXT) END;
                """);

            migrationBuilder.DropColumn(
                name: "VersionBefore",
                table: "TestRounds");

            migrationBuilder.AddColumn<int>(
                name: "BeganWith",
                table: "ShareLinks",
                type: "integer",
                nullable: true);

            migrationBuilder.AddColumn<DateOnly>(
                name: "LastDay",
                table: "ShareLinks",
                type: "date",
                nullable: true);

            migrationBuilder.AddColumn<DateOnly>(
                name: "Changed",
                table: "Corrections",
                type: "date",
                nullable: true);

            migrationBuilder.AddColumn<DateOnly>(
                name: "Withdrawn",
                table: "Corrections",
                type: "date",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "CorrectionWordings",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    CorrectionId = table.Column<Guid>(type: "uuid", nullable: false),
                    Since = table.Column<DateOnly>(type: "date", nullable: false),
                    Version = table.Column<int>(type: "integer", nullable: false),
                    Words = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CorrectionWordings", x => x.Id);
                    table.ForeignKey(
                        name: "FK_CorrectionWordings_Corrections_CorrectionId",
                        column: x => x.CorrectionId,
                        principalTable: "Corrections",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "IX_CorrectionWordings_CorrectionId",
                table: "CorrectionWordings",
                column: "CorrectionId");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "CorrectionWordings");

            migrationBuilder.DropColumn(
                name: "ShownVersions",
                table: "TestRounds");

            migrationBuilder.DropColumn(
                name: "BeganWith",
                table: "ShareLinks");

            migrationBuilder.DropColumn(
                name: "LastDay",
                table: "ShareLinks");

            migrationBuilder.DropColumn(
                name: "Changed",
                table: "Corrections");

            migrationBuilder.DropColumn(
                name: "Withdrawn",
                table: "Corrections");

            migrationBuilder.AddColumn<int>(
                name: "VersionBefore",
                table: "TestRounds",
                type: "integer",
                nullable: true);
        }
    }
}
